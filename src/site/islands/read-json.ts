/**
 * Reads a file of the site's own records. In a folder that was opened without a server nothing may be fetched; there the
 * file lies a second time as a script, `<name>.js`, which hangs what it holds on its own element. Throws when it is not there.
 * Its address comes from a `data-` attribute of the page, and addresses in it are meant from where the file lies, or a copy
 * for a hall cannot find them. `sent` is its request, where that was sent already.
 */
export async function readJson(address: string, sent: Promise<Response> | null = null): Promise<unknown> {
  if (location.protocol === 'file:') return laidBy(`${address}.js`);
  const response = await (sent ?? fetch(address));
  if (!response.ok) throw new Error(String(response.status));
  return response.json();
}

function laidBy(address: string): Promise<unknown> {
  return new Promise((settle, fail) => {
    const script = document.createElement('script');
    script.addEventListener('load', () => {
      settle(Reflect.get(script, 'laid'));
      script.remove();
    });
    script.addEventListener('error', () => fail(new Error(address)));
    script.src = address;
    document.head.append(script);
  });
}
