import Check from './check.tsx';
import { Mitres } from './mitres.tsx';
import { Tools } from './tools.tsx';
import './square.css';

/** Squareness of a piece, of the tools that say so, and of mitred corners. Pieces' ids are random, so the two words are free. */
export default function SquareScreen({ id }: { id: string }) {
  if (id === 'tools') return <Tools />;
  if (id === 'mitres') return <Mitres />;
  return <Check id={id} />;
}
