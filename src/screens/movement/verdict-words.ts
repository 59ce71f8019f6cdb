import type { JointAdvice, JointVerdict } from '../../core/movement/joint-verdict.ts';

const words: Record<JointAdvice, string> = {
  glue: 'Glue it',
  'glue-stretch': 'Glue a short stretch',
  float: 'Let it float',
  align: 'Align it, no glue',
  mechanical: 'Not by glue alone',
};

export function verdictWords({ advice, moves }: JointVerdict): string {
  return advice === 'mechanical' && moves ? 'Not by glue alone, and let it move' : words[advice];
}
