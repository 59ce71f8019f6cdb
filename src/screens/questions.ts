/** The question of each screen that is not there from the start: a tap is answered with it before the screen itself is. */
export const questions = {
  stock: 'What is in the rack?',
  piece: 'What are its parts?',
  movement: 'How will it move?',
  wood: 'Which woods are yours alone?',
  breakdown: 'Which board gives which panel?',
  mill: 'In which order to mill?',
  square: 'Is it square?',
  glue: 'Enough glue, time and clamps?',
  finish: 'How much finish?',
  sheet: 'What goes on paper?',
  shop: 'What does your shop allow?',
  data: 'Are your records safe?',
} as const;
