import * as Comlink from 'comlink';
import { createEngine } from './engine.ts';

Comlink.expose(createEngine());
