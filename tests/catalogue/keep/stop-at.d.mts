export function stopAt(folder: string, at: number, how: string, into?: string): void;
export function changesSeen(): number;
