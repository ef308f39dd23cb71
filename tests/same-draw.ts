import process from 'node:process';
import fc from 'fast-check';

// Where a change is judged, every property draws the same examples each time, so that a red run is the change's own. At
// home the draw is new each time and finds what the other did not.
if (process.env['CI'] !== undefined) fc.configureGlobal({ seed: 1279 });
