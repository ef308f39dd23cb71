/** Width and height in pixels. */
export type Extent = { readonly width: number; readonly height: number };
export type Point = { readonly x: number; readonly y: number };

/**
 * What of a picture is seen through a glass: how many pixels of the screen one of the picture takes, and how far the
 * middle of the picture lies from the middle of the glass, in pixels of the screen.
 */
export type View = Point & { readonly zoom: number };

/** How near a picture may come: past three pixels of the screen for one of its own there is nothing more to see. */
const NEAREST = 3;

/** The whole picture, as large as the glass holds, in its middle. */
export function wholeView(glass: Extent, picture: Extent): View {
  return { zoom: Math.min(glass.width / picture.width, glass.height / picture.height), x: 0, y: 0 };
}

/** The view so many times nearer. What lies at a point, measured from the middle of the glass, stays there as far as it can. */
export function brought(view: View, times: number, at: Point, glass: Extent, picture: Extent): View {
  const whole = wholeView(glass, picture).zoom;
  const zoom = Math.min(Math.max(view.zoom * times, whole), Math.max(NEAREST, whole));
  const grown = zoom / view.zoom;
  return held({ zoom, x: at.x - (at.x - view.x) * grown, y: at.y - (at.y - view.y) * grown }, glass, picture);
}

/** The view with the picture moved by so much. */
export function moved(view: View, by: Point, glass: Extent, picture: Extent): View {
  return held({ zoom: view.zoom, x: view.x + by.x, y: view.y + by.y }, glass, picture);
}

/** No edge of a picture comes further in than the edge of the glass; what is smaller than the glass lies in its middle. */
function held({ zoom, x, y }: View, glass: Extent, picture: Extent): View {
  const reach = (length: number, room: number): number => Math.max(0, (length * zoom - room) / 2);
  const within = (place: number, most: number): number => Math.min(Math.max(place, -most), most);
  return {
    zoom,
    x: within(x, reach(picture.width, glass.width)),
    y: within(y, reach(picture.height, glass.height)),
  };
}

const STEPS = [1, 2, 5, 10, 20, 50, 100] as const;

/** How many millimetres from one number of a rule to the next, so that two of them keep some room between them. */
export function numberedEvery(pixelsAMillimetre: number, room = 40): number {
  return STEPS.find((step) => step * pixelsAMillimetre >= room) ?? STEPS[STEPS.length - 1] ?? 1;
}
