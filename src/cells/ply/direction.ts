export type Direction = 'S' | 'Z' | 'I';
