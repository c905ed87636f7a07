/** Version of Thrum, written into every result; a test keeps it equal to package.json. */
export const VERSION = '0.7.0';
