/** An amount in the smallest unit of its currency (pence, cents), with the ISO 4217 code and the text as written. */
export type Money = { readonly minor: number; readonly currency: string; readonly text: string };
