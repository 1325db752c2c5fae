#!/usr/bin/env node
// Plain JavaScript that any Node can read: it checks the version before anything newer is loaded.
const needed = 24;
const [major] = process.versions.node.split('.');

if (Number(major) < needed) {
  process.stderr.write(
    `Slateline needs Node ${needed} or newer and this is Node ${process.versions.node}: ` +
      'start it with "npm run -s slateline -- VERB ..." from its folder, where npm ci has put the right one.\n',
  );
  process.exitCode = 2;
} else {
  const { keepCompiled } = await import('../src/cli/compile-cache.ts');
  keepCompiled();
  const { main } = await import('../src/cli/main.ts');
  await main();
}
