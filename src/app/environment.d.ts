/** What the bundler adds to plain modules. */
declare module '*.css';
declare module '@fontsource-variable/*';
declare module '*?url' {
  const address: string;
  // biome-ignore lint/style/noDefaultExport: the bundler gives the address as the default export
  export default address;
}

interface ImportMeta {
  /** Files matching a pattern, as addresses to fetch; replaced at build time. */
  glob(
    pattern: string | string[],
    options: { query: '?url'; import: 'default'; eager: true },
  ): Record<string, string>;
}
