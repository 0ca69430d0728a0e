import { createHash } from 'node:crypto';
import type { OpenAPIObject } from '@nestjs/swagger';

interface Operation {
  tags?: string[];
  parameters?: { name: string; in: string; required?: boolean; description?: string; schema?: object }[];
  requestBody?: { content?: Record<string, { schema?: object }> };
  responses: Record<string, { description?: string }>;
}

/** The OpenAPI document as one page to read or print; no script, nothing from elsewhere. */
export function readablePage(document: OpenAPIObject): string {
  const groups = new Map<string, string[]>();
  for (const [path, operations] of Object.entries(document.paths)) {
    for (const [method, operation] of Object.entries(operations as Record<string, Operation>)) {
      const group = operation.tags?.[0] ?? 'Other';
      groups.set(group, [...(groups.get(group) ?? []), operationText(method, path, operation)]);
    }
  }
  const schemas = Object.entries(document.components?.schemas ?? {});
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Deckround: the interface</title><style>${STYLE}</style></head><body>
<h1>Deckround: the interface</h1><p>${withCode(document.info.description ?? '')}</p>
<p>The same for programs: <a href="/openapi.json">/openapi.json</a> (OpenAPI 3.1).</p>
<nav>${[...groups.keys()].map((name) => `<a href="#${slug(name)}">${htmlText(name)}</a>`).join(' · ')} · <a href="#shapes">Shapes</a></nav>
${[...groups].map(([name, texts]) => `<section id="${slug(name)}"><h2>${htmlText(name)}</h2>${texts.join('')}</section>`).join('\n')}
<section id="shapes"><h2>Shapes</h2>${schemas.map(([name, schema]) => shapeText(name, schema as Shape)).join('')}</section>
</body></html>`;
}

function operationText(method: string, path: string, operation: Operation): string {
  const parameters = (operation.parameters ?? []).map(
    (each) =>
      `<li><code>${htmlText(each.name)}</code> (${each.in}${each.required ? '' : ', may be left out'}) ${htmlText(each.description ?? typeText(each.schema))}</li>`,
  );
  const body = Object.values(operation.requestBody?.content ?? {})[0]?.schema;
  const answers = Object.entries(operation.responses).map(
    ([status, each]) => `<li><b>${status}</b> ${htmlText(each.description ?? '')}</li>`,
  );
  const success = Object.entries(operation.responses).find(([status]) => status.startsWith('2'))?.[1].description ?? '';
  return `<article><h3><b>${method.toUpperCase()}</b> ${htmlText(path)}</h3><p>${withCode(success)}</p>
${parameters.length > 0 ? `<p>Takes</p><ul>${parameters.join('')}</ul>` : ''}
${body ? `<p>Body: ${typeText(body)}</p>` : ''}
<details><summary>Answers</summary><ul>${answers.join('')}</ul></details></article>`;
}

interface Shape {
  $ref?: string;
  type?: string | string[];
  format?: string;
  description?: string;
  properties?: Record<string, Shape>;
  required?: string[];
  items?: Shape;
  enum?: unknown[];
  anyOf?: Shape[];
}

function shapeText(name: string, schema: Shape): string {
  const rows = Object.entries(schema.properties ?? {}).map(
    ([field, each]) =>
      `<tr><td><code>${htmlText(field)}</code></td><td>${typeText(each)}${schema.required?.includes(field) ? '' : ', may be left out'}</td><td>${htmlText(each.description ?? '')}</td></tr>`,
  );
  return `<article id="shape-${slug(name)}"><h3>${htmlText(name)}</h3><p>${htmlText(schema.description ?? '')}</p>${rows.length > 0 ? `<table>${rows.join('')}</table>` : `<p>${typeText(schema)}</p>`}</article>`;
}

function typeText(schema: Shape | undefined): string {
  if (!schema) return '';
  if (schema.$ref) {
    const name = schema.$ref.split('/').at(-1)!;
    return `<a href="#shape-${slug(name)}">${htmlText(name)}</a>`;
  }
  if (schema.enum) return schema.enum.map((each) => `<code>${htmlText(String(each))}</code>`).join(' or ');
  if (schema.anyOf) return schema.anyOf.map(typeText).join(' or ');
  if (schema.items) return `list of ${typeText(schema.items)}`;
  return htmlText([schema.type ?? 'anything', schema.format].filter(Boolean).flat().join(', '));
}

/** Text whose `quoted` parts are code. */
function withCode(text: string): string {
  return htmlText(text).replace(/`([^`]+)`/g, '<code>$1</code>');
}

function slug(name: string): string {
  return name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
}

function htmlText(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

const STYLE = `:root{color-scheme:light dark;--ink:#23241f;--paper:#faf8f2;--rule:#c9c4b5;--moss:#3d5a2f}
@media(prefers-color-scheme:dark){:root{--ink:#e8e4d8;--paper:#1d1e1b;--rule:#4a4b44;--moss:#a9c795}}
body{font:16px/1.5 system-ui,sans-serif;color:var(--ink);background:var(--paper);max-width:52rem;margin:0 auto;padding:1.5rem;overflow-wrap:anywhere}
a{color:var(--moss)}h2{border-top:2px solid var(--rule);padding-top:1rem;margin-top:2.5rem}
h3{font:600 1rem/1.4 ui-monospace,monospace;margin:1.5rem 0 .25rem}p{margin:.25rem 0}ul{margin:.25rem 0;padding-left:1.25rem}
table{border-collapse:collapse;width:100%}td{border-top:1px solid var(--rule);padding:.25rem .75rem .25rem 0;vertical-align:top}
code{font:.9em ui-monospace,monospace}summary{cursor:pointer}`;

/** The page's own style as a source of the Content-Security-Policy: no other inline style is let in. */
export const READABLE_PAGE_STYLE = `'sha256-${createHash('sha256').update(STYLE).digest('base64')}'`;
