import type { Layer } from '../relief.ts';
import { beads, crossPattee, dot, ring, round } from '../shapes.ts';
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

/** A ring of beads that bounds a legend. */
export function beadedCircle(radius: number, size = 8.5, apart = 2.3): Layer {
  return { draw: beads(radius, Math.round((2 * Math.PI * radius) / (size * apart)), size), height: 9, round: size };
}

export function smallCross(size = 110): string {
  return crossPattee(0, 0, size, size * 0.22, size * 0.62);
}

export function plainCircle(radius: number, width = 7): string {
  return ring(0, 0, radius, width);
}
