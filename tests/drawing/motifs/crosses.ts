import { crossPattee, dot, round } from '../shapes.ts';
import { fill } from '../shapes.ts';

/** The long cross of 1279: four arms from the centre to the edge, broad at the end. */
export function longCross(reach = 492): string {
  return round(
    fill(
      `M-19 0Q-16 -${reach * 0.5} -19 -${reach * 0.72}Q-26 -${reach * 0.88} -50 -${reach}L50 -${reach}Q26 -${reach * 0.88} 19 -${reach * 0.72}Q16 -${reach * 0.5} 19 0Z`,
    ),
    4,
  );
}

/** Three pellets in each angle of a cross. */
export function threePellets(far = 150, size = 37): string {
  return round(place3(far, size), 4, 45);
}

function place3(far: number, size: number): string {
  return (
    dot(0, -far + size * 0.95, size) +
    dot(-size * 1.02, -far - size * 0.8, size) +
    dot(size * 1.02, -far - size * 0.8, size)
  );
}

/** The plain cross of so many small pieces. */
export function smallCross(size = 110): string {
  return crossPattee(0, 0, size, size * 0.22, size * 0.62);
}
