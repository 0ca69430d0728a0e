import swc from '@swc/jest';

/**
 * Built-ins that a test's files hold as constants of their own. Files run in a sandbox whose global object answers each
 * look-up through an interceptor: inner loops that name `Math` are some twenty times slower there. Date and timers stay
 * out, which tests replace.
 *
 * @source Jest's documentation of sandboxInjectedGlobals, which does the same for CommonJS alone
 */
const OWN_GLOBALS = [
  ...['Array', 'Atomics', 'BigInt', 'JSON', 'Map', 'Math', 'Number', 'Object', 'Set', 'String', 'Symbol', 'WeakMap'],
  ...['Float32Array', 'Float64Array', 'Int8Array', 'Int16Array', 'Int32Array', 'Uint8Array', 'Uint16Array'],
  'Uint32Array',
];

// On the first line, so that the source map's lines stay true.
const HEAD = `const { ${OWN_GLOBALS.join(', ')} } = globalThis;`;

/** SWC for TypeScript, with decorators as NestJS wants them. */
export default {
  createTransformer: () => {
    const typescript = swc.createTransformer({
      jsc: {
        target: 'es2022',
        parser: { syntax: 'typescript', decorators: true },
        transform: { legacyDecorator: true, decoratorMetadata: true },
      },
      module: { type: 'es6' },
      sourceMaps: 'inline',
    });
    const withHead = ({ code, ...rest }) => ({ ...rest, code: HEAD + code });
    return {
      process: (...file) => withHead(typescript.process(...file)),
      processAsync: async (...file) => withHead(await typescript.processAsync(...file)),
      getCacheKey: (...file) => HEAD + typescript.getCacheKey(...file),
    };
  },
};
