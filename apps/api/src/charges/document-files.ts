import { type ChargeDocument, writeUbl } from '@deckround/billing';
import { StreamableFile } from '@nestjs/common';
import type { DocumentRow } from './document-view.js';

export function ublFile(row: DocumentRow): StreamableFile {
  const document = row.document as unknown as ChargeDocument;
  return new StreamableFile(Buffer.from(writeUbl(document)), {
    type: 'application/xml; charset=utf-8',
    disposition: `attachment; filename="${document.kind}-${document.number ?? 'draft'}.xml"`,
  });
}

export async function pdfFile(row: DocumentRow): Promise<StreamableFile> {
  const document = row.document as unknown as ChargeDocument;
  const { writePdf } = await import('./write-pdf.js');
  return new StreamableFile(await writePdf(document), {
    type: 'application/pdf',
    disposition: `inline; filename="${document.kind}-${document.number ?? 'draft'}.pdf"`,
  });
}
