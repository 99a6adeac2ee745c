/** The folder says who may import it: shared <- main <- hosts, shared <- app. */
module.exports = {
  forbidden: [
    {
      name: 'no-circular',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'shared-is-pure',
      severity: 'error',
      from: { path: '^shared/' },
      to: { path: '^(app|main|test)/' },
    },
    {
      name: 'shared-has-no-io',
      severity: 'error',
      from: { path: '^shared/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'app-meets-main-only-in-the-contract',
      severity: 'error',
      from: { path: '^app/' },
      to: { path: '^(main|test)/' },
    },
    {
      name: 'main-does-not-know-the-window',
      severity: 'error',
      from: { path: '^main/' },
      to: { path: '^(app|test)/' },
    },
    {
      name: 'backend-does-not-know-its-hosts',
      severity: 'error',
      from: { path: '^main/(?!hosts/)' },
      to: { path: '^main/hosts/' },
    },
    {
      name: 'only-the-electron-host-knows-electron',
      severity: 'error',
      from: { path: '^(shared|app|main/(?!hosts/(electron|preload|menu)))' },
      to: { path: '^(node_modules/)?electron($|/)' },
    },
    {
      name: 'not-to-dev-dep',
      severity: 'error',
      from: { path: '^(app|main|shared)/' },
      to: { dependencyTypes: ['npm-dev'], pathNot: 'electron|vite' },
    },
    { name: 'resolvable', severity: 'error', from: {}, to: { couldNotResolve: true, pathNot: '^electron$' } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    detectProcessBuiltinModuleCalls: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.cjs', '.json', '.css'],
    },
  },
};
