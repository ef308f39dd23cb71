import { rolldown } from 'rolldown';

/**
 * A module and all it imports as one script that runs in its turn: from a folder a browser loads scripts, but no modules.
 * `file` is a path on the disk; errors are thrown.
 */
export async function classicScript(file: string): Promise<string> {
  const bundle = await rolldown({ input: file, logLevel: 'silent' });
  try {
    const { output } = await bundle.generate({ format: 'iife', minify: true, codeSplitting: false });
    return output[0].code;
  } finally {
    await bundle.close();
  }
}

/** A file of data as a script that hands it to the page: it hangs what it holds on its own element. */
export function dataScript(json: string): string {
  return `document.currentScript.laid=${json.replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029')};\n`;
}
