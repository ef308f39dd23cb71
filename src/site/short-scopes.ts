/** As Astro marks every element of a component that has styles: a digest of the component's path. */
const SCOPE = /data-astro-cid-([a-z0-9]{8})/g;

/**
 * Shortens the names by which styles are kept to their components, from `data-astro-cid-gk2y4x2r` to `data-0gk2y`, in the
 * compiled components and in their styles alike. A page of a piece has four hundred of them, which were a quarter of its bytes.
 */
export function shortScopes(): {
  readonly name: string;
  readonly transform: (code: string, id: string) => { readonly code: string; readonly map: null } | null;
} {
  const full = new Map<string, string>();
  const short = (whole: string, digest: string): string => {
    const name = `data-0${digest.slice(0, 4)}`;
    const other = full.get(name);
    if (other !== undefined && other !== whole) throw new Error(`Two components would have the scope ${name}.`);
    full.set(name, whole);
    return name;
  };
  return {
    name: 'short-scopes',
    transform: (code, id) =>
      id.includes('.astro') && code.includes('data-astro-cid-')
        ? { code: code.replace(SCOPE, short), map: null }
        : null,
  };
}
