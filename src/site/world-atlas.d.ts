/** The land of the world as a topology, after Natural Earth (public domain). */
declare module 'world-atlas/land-10m.json' {
  import type { Topology } from 'topojson-specification';
  const land: Topology;
  export default land;
}

declare module 'world-atlas/land-110m.json' {
  import type { Topology } from 'topojson-specification';
  const land: Topology;
  export default land;
}
