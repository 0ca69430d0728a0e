import { useWords } from '../../words/words.js';
import { type Settings, Text } from './setting-fields.js';

type Party = Pick<Settings['seller'], 'legalName' | 'taxNumber' | 'address'>;

/** Name, tax number and address of whoever charges or pays, as they stand on the document. */
export function PartyFields({ value, onChange }: { readonly value: Party; readonly onChange: (value: Party) => void }) {
  const { t } = useWords();
  const { legalName, taxNumber, address } = value;
  const party = { legalName, taxNumber, address };
  return (
    <>
      {(['legalName', 'taxNumber'] as const).map((name) => (
        <Text
          key={name}
          word={`setting.${name}`}
          value={party[name]}
          onChange={(typed) => onChange({ ...party, [name]: typed })}
        />
      ))}
      {(['street', 'city', 'postalCode', 'subdivision'] as const).map((name) => (
        <Text
          key={name}
          word={`setting.${name}`}
          value={address[name]}
          onChange={(typed) => onChange({ ...party, address: { ...address, [name]: typed } })}
        />
      ))}
      <Text
        word="setting.country"
        value={address.country}
        fault={/^[A-Z]{2}$/.test(address.country) ? undefined : t('fault.country')}
        onChange={(typed) => onChange({ ...party, address: { ...address, country: typed.trim().toUpperCase() } })}
      />
    </>
  );
}
