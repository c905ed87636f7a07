#!/usr/bin/env node
import { runProgram } from './program.ts';
import { processTerminal } from './terminal.ts';

const terminal = processTerminal();
process.exitCode = await terminal.leave(await runProgram(process.argv.slice(2), terminal));
