// node validate.mjs FILE...: what the validators have to say about pages, as one JSON list of { file, validator, severity, message }.
import { readFileSync } from 'node:fs';
import { HtmlValidate } from 'html-validate';
import Validator from '@adobe/structured-data-validator';
import WebAutoExtractor from '@marbec/web-auto-extractor';
import { vocabulary } from './vocabulary.mjs';

const html = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'no-missing-references': 'error' } });
const structured = new (Validator.Validator ?? Validator)(vocabulary());
const said = [];
for (const file of process.argv.slice(2)) {
  const page = readFileSync(file, 'utf8');
  const report = await html.validateString(page, file);
  for (const message of report.results.flatMap(result => result.messages)) {
    said.push({ file, validator: 'html', severity: message.severity === 2 ? 'ERROR' : 'WARNING', message: `${message.ruleId}: ${message.message} (line ${message.line})` });
  }

  const found = new WebAutoExtractor({ addLocation: true }).parse(page);
  if (Object.keys(found.jsonld ?? {}).length === 0) {
    said.push({ file, validator: 'structured', severity: 'ERROR', message: 'no structured data was found' });
  }

  for (const issue of await structured.validate(found)) {
    const path = (issue.path ?? []).map(part => `${part.property ?? ''}${part.type ?? ''}${part.index === undefined ? '' : `[${part.index}]`}`).join('/');
    said.push({ file, validator: 'structured', severity: issue.severity, message: `${issue.issueMessage} ${path}` });
  }
}

console.log(JSON.stringify(said));
