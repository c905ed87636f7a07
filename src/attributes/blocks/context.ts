import type { AttributeDefinition } from '../definition.ts';
import { IDENTITY } from './context-identity.ts';
import { RECORD } from './context-record.ts';
import { TIME } from './context-time.ts';

/** Which find it is, where and when it was found, who recorded it: used to group, never compared. */
export const CONTEXT: readonly AttributeDefinition[] = [...IDENTITY, ...TIME, ...RECORD];
