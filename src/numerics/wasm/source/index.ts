export { addCentre, addUp, assign, loosen, reach, sum, withinSquares } from './means';
export { addGains, addSwaps } from './medoids';
export { unite, uniteColumns } from './recurrence';
export { append, nearestInRow, pick } from './rows';
