export { addCentre, addUp, assign, loosen, reach, sum, withinSquares } from './means';
export { unite, uniteColumns } from './recurrence';
export { append, nearestInRow, pick } from './rows';
