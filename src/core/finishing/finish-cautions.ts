import { type Phrase, phrase } from '../answer/phrase.ts';
import type { Finish } from './finish.ts';

const vapour = phrase`Open the windows. No flame, sparks or pilot light. A mask for organic vapour in still air.`;

/**
 * What to mind with a finish: its vapour first, then what its own row says.
 *
 * @param finish a row of the finishes' table
 * @returns sentences, the most urgent first
 * @valid finishes with or without solvent
 * @example finishCautions(finishById('shellac'))[0].text.includes('flame') // => true
 * @source as of the row; vapour: common practice
 */
export const finishCautions = (finish: Finish): readonly Phrase[] =>
  finish.solvent ? [vapour, ...finish.cautions] : finish.cautions;

/** How to be rid of rags before they can heat up. */
export const ragsTodo = phrase`Spread every rag flat and single outdoors until it is stiff, or drown it in water in a lidded metal can. Never in a heap or in the bin.`;
