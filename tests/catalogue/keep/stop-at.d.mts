export function stopAt(folder: string, at: number, how: string): void;
export function changesSeen(): number;
