// A receiver of charge documents, as another system would have it: node sample-receiver.mjs BASE KEY LEDGER.json
// It may be stopped at any moment: the ledger and the cursor are one file, replaced whole.
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';

const [base, key, path] = process.argv.slice(2);
const ledger = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : { after: 0, entries: {} };

async function call(route, body) {
  const response = await fetch(`${base}/v1/accounting/${route}`, {
    method: body ? 'POST' : 'GET',
    headers: { authorization: `Bearer ${key}`, ...(body && { 'content-type': 'application/json' }) },
    ...(body && { body: JSON.stringify(body) }),
  });
  const answer = await response.json();
  if (!response.ok) throw new Error(answer.detail);
  return answer;
}

function save() {
  writeFileSync(`${path}.new`, JSON.stringify(ledger, null, 1));
  renameSync(`${path}.new`, path);
}

for (let more = true; more; ) {
  const page = await call(`changes?after=${ledger.after}&limit=50`);
  for (const { documentId, what } of page.items) {
    if (what !== 'issued' && what !== 'credited') continue;
    if (!ledger.entries[documentId]) {
      const { document, totalCents } = await call(`documents/${documentId}`);
      const own = `L-${Object.keys(ledger.entries).length + 1}`;
      ledger.entries[documentId] = { own, number: document.number, kind: document.kind, totalCents };
      save();
    }
    await call(`documents/${documentId}/acknowledge`, { receiverNumber: ledger.entries[documentId].own });
  }
  ledger.after = page.last;
  save();
  more = page.more;
}
const known = Object.entries(ledger.entries).map(([documentId, { totalCents }]) => ({ documentId, totalCents }));
const { missing, different } = await call('reconcile', { from: '2000-01-01', to: '2999-12-31', known });
console.log(JSON.stringify({ entries: known.length, missing: missing.length, different: different.length }));
