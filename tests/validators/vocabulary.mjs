// The vocabulary of schema.org as the validator wants it, from the types that the package schema-dts generates from it:
// which properties a type has, and which types it stems from.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export function vocabulary() {
  const types = readFileSync(fileURLToPath(import.meta.resolve('schema-dts').replace(/schema\.js$/, 'schema.d.ts')), 'utf8');
  const classes = new Map();
  const properties = new Map();
  const at = name => classes.get(name) ?? classes.set(name, new Set()).get(name);
  const names = heritage => [...heritage.matchAll(/(\w+)Base\b/g)].map(match => match[1]);
  for (const [, name, heritage, body] of types.matchAll(/^interface (\w+)Base extends ([^{]+)\{([\s\S]*?)^\}/gm)) {
    names(heritage).forEach(parent => at(name).add(parent));
    for (const [, property] of body.matchAll(/^ {4}"(\w+)"\?:/gm)) {
      (properties.get(property) ?? properties.set(property, new Set()).get(property)).add(name);
    }
  }

  for (const [, heritage, name] of types.matchAll(/^export interface \w+Leaf extends ([^{]+)\{\s*"@type": "(\w+)"/gm)) {
    names(heritage).filter(parent => parent !== name).forEach(parent => at(name).add(parent));
    at(name);
  }

  const link = name => ({ '@id': `schema:${name}` });
  return {
    '@graph': [
      ...[...classes].map(([name, parents]) => ({ '@id': `schema:${name}`, '@type': 'rdfs:Class', 'rdfs:subClassOf': [...parents].map(link) })),
      ...[...properties].map(([name, domains]) => ({ '@id': `schema:${name}`, '@type': 'rdf:Property', 'schema:domainIncludes': [...domains].map(link) })),
    ],
  };
}
