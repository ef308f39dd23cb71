const ADDRESS = /url\((["']?)([^"')]+)\1\)/g;

/**
 * A style sheet with its fonts inside it and every other address as `readdress` says. Some browsers take a font that lies
 * in another folder for a stranger's. `fontAt` gives the bytes of a font in base64, null for what is none.
 */
export async function rewriteStyle(
  style: string,
  readdress: (address: string) => string,
  fontAt: (address: string) => Promise<string | null>,
): Promise<string> {
  const fonts = new Map<string, string | null>();
  for (const [, , address = ''] of style.matchAll(ADDRESS)) fonts.set(address, await fontAt(address));
  return style.replace(ADDRESS, (_, __, address: string) => {
    const font = fonts.get(address) ?? null;
    return font === null ? `url("${readdress(address)}")` : `url(data:font/woff2;base64,${font})`;
  });
}
