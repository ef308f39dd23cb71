/** A file of a new cabinet; `file` from the cabinet's folder on. */
export type NewFile = { readonly file: string; readonly text: string };

/** Where the program lies, and which one it is. */
export type Program = { readonly folder: string; readonly version: string };

/** Those of the files for a double click that must be allowed to run. */
export const TO_RUN = ['open-the-desk.command', 'open-the-desk.sh'] as const;

const NO_NODE = 'Node.js is not on this machine. Install it from nodejs.org, and open this file again.';
const NO_PROGRAM = 'The program is not in this folder any more. Put it back, or write its new place into this file:';
const NOT_INSTALLED = 'The program is not installed completely. Open a terminal in its folder and write: npm ci';
const CLOSE = 'Close this window to close the desk.';

/** A small file each for Windows, macOS and Linux that opens the desk of the cabinet it lies in. */
export function startersOf({ folder, version }: Program): readonly NewFile[] {
  const shell = shellStarter(folder, version);
  return [
    { file: 'open-the-desk.cmd', text: windowsStarter(folder, version) },
    { file: 'open-the-desk.command', text: shell },
    { file: 'open-the-desk.sh', text: shell },
  ];
}

function shellStarter(folder: string, version: string): string {
  const program = `'${folder.replaceAll("'", `'\\''`)}'`;
  return `#!/bin/sh
# Opens the desk of this cabinet, for this machine alone.
PROGRAM=${program}
HERE=$(cd "$(dirname "$0")" && pwd)
say() {
  echo "$1"
  echo "Press Enter to close this window."
  read -r _
  exit 1
}
command -v node >/dev/null 2>&1 || say "${NO_NODE}"
[ -f "$PROGRAM/src/commands/run.mjs" ] || say "${NO_PROGRAM} $PROGRAM"
[ -d "$PROGRAM/node_modules" ] || say "${NOT_INSTALLED}"
cd "$PROGRAM" || say "${NO_PROGRAM} $PROGRAM"
echo "${CLOSE}"
node src/commands/run.mjs desk --browse --made-by ${version} --cabinet "$HERE" || say "The desk did not open."
`;
}

function windowsStarter(folder: string, version: string): string {
  const stop = (sentence: string): string => `(\n  echo ${sentence}\n  pause\n  exit /b 1\n)`;
  const lines = `@echo off
rem Opens the desk of this cabinet, for this machine alone.
chcp 65001 >nul
setlocal
set "PROGRAM=${folder.replaceAll('%', '%%')}"
where node >nul 2>nul
if errorlevel 1 ${stop(NO_NODE)}
if not exist "%PROGRAM%\\src\\commands\\run.mjs" ${stop(`${NO_PROGRAM} "%PROGRAM%"`)}
if not exist "%PROGRAM%\\node_modules" ${stop(NOT_INSTALLED)}
cd /d "%PROGRAM%"
echo ${CLOSE}
node src\\commands\\run.mjs desk --browse --made-by ${version} --cabinet "%~dp0."
pause
`;
  return lines.replaceAll('\n', '\r\n');
}
