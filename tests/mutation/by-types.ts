import { join } from 'node:path';
import ts from 'typescript';

/** Whether the compiler, which continuous integration runs before the tests, rejects a file with this text. */
export function typesReject(root: string): (file: string, text: string) => boolean {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const broken = new Map<string, { readonly text: string; readonly version: number }>();
  let version = 0;
  const service = ts.createLanguageService({
    getCompilationSettings: () => options,
    getScriptFileNames: () => fileNames,
    getScriptVersion: (path) => String(broken.get(path)?.version ?? 0),
    getScriptSnapshot: (path) => {
      const text = broken.get(path)?.text ?? ts.sys.readFile(path);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getCurrentDirectory: () => root,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
    readDirectory: ts.sys.readDirectory,
    directoryExists: ts.sys.directoryExists,
    getDirectories: ts.sys.getDirectories,
  });
  return (file, text) => {
    const path = join(root, file);
    broken.set(path, { text, version: ++version });
    const faults = [...service.getSyntacticDiagnostics(path), ...service.getSemanticDiagnostics(path)];
    broken.set(path, { text: ts.sys.readFile(path) ?? '', version: ++version });
    return faults.length > 0;
  };
}
