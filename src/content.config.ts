import { defineCollection } from 'astro:content';
import { z } from 'astro/zod';
import { cabinetLoader } from './catalogue/collection-loader.ts';
import type { Filed, FiledPiece } from './catalogue/records.ts';
import type { CabinetFields } from './catalogue/schema/cabinet.ts';
import type { ExhibitFields } from './catalogue/schema/exhibit.ts';
import type { EraFields, SetFields } from './catalogue/schema/goals.ts';
import type { DenominationFields, MintFields, RulerFields, WorkFields } from './catalogue/schema/lists.ts';

// The loader has read every file against its form in src/catalogue/schema already; here stand the types.
export const collections = {
  cabinet: defineCollection({ loader: cabinetLoader('cabinet'), schema: z.custom<Filed<CabinetFields>>() }),
  pieces: defineCollection({ loader: cabinetLoader('pieces'), schema: z.custom<FiledPiece>() }),
  rulers: defineCollection({ loader: cabinetLoader('rulers'), schema: z.custom<Filed<RulerFields>>() }),
  mints: defineCollection({ loader: cabinetLoader('mints'), schema: z.custom<Filed<MintFields>>() }),
  denominations: defineCollection({
    loader: cabinetLoader('denominations'),
    schema: z.custom<Filed<DenominationFields>>(),
  }),
  eras: defineCollection({ loader: cabinetLoader('eras'), schema: z.custom<Filed<EraFields>>() }),
  sets: defineCollection({ loader: cabinetLoader('sets'), schema: z.custom<Filed<SetFields>>() }),
  exhibits: defineCollection({ loader: cabinetLoader('exhibits'), schema: z.custom<Filed<ExhibitFields>>() }),
  works: defineCollection({ loader: cabinetLoader('works'), schema: z.custom<Filed<WorkFields>>() }),
};
