// Runs in a review pack opened from disk: keeps what was entered, and saves it as a CSV with the columns of the worklist.
const who = document.querySelector("#who");
const state = document.querySelector("#state");
const records = [...document.querySelectorAll("fieldset[data-record]")];
const draft = `pack ${document.body.dataset.pack}`;
// By record and by what it said: a later pack of this name has other records, and a record may have changed.
const keyOf = ({ dataset }) => `${dataset.record} ${dataset.mark}`;
const fieldsOf = (record) => [...record.querySelectorAll("[name]")];

/** Where pages opened from disk may keep nothing, the pack works all the same, and keeps nothing. */
function keep() {
  try {
    const entered = records.map((record) => [keyOf(record), fieldsOf(record).map(({ name, value }) => [name, value])]);
    localStorage.setItem(draft, JSON.stringify({ who: who.value, records: entered }));
  } catch {}
}

function takeUp() {
  try {
    const kept = JSON.parse(localStorage.getItem(draft) ?? "{}");
    who.value = kept.who ?? "";
    const entered = new Map(kept.records);
    for (const record of records) {
      const values = new Map(entered.get(keyOf(record)));
      for (const field of fieldsOf(record)) field.value = values.get(field.name) ?? "";
    }
  } catch {}
}

const isRuled = (record) => [...record.querySelectorAll("select")].some(({ value }) => value !== "");

function tell() {
  const ruled = records.filter(isRuled).length;
  state.textContent = `${ruled} of ${records.length} records ruled on`;
}

const cell = (text) => `"${String(text).replaceAll('"', '""')}"`;

function rows() {
  const header = ["record", "mark", "ruling", "value", "identification", "part_seen", "why", "who"];
  const answers = records.filter(isRuled).map((record) => {
    const of = (name) => record.querySelector(`[name=${name}]`).value.trim();
    const { record: key, mark } = record.dataset;
    return [key, mark, of("ruling"), of("value"), of("identification"), of("part_seen"), of("why"), who.value.trim()];
  });
  return `${[header, ...answers].map((row) => row.map(cell).join(",")).join("\r\n")}\r\n`;
}

document.addEventListener("input", () => {
  keep();
  tell();
});
document.querySelector("#save").addEventListener("click", () => {
  if (who.value.trim() === "") {
    state.textContent = "Say who you are first: initials will do.";
    who.focus();
    return;
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([rows()], { type: "text/csv" }));
  link.download = `${document.body.dataset.pack}-${who.value.trim().replaceAll(/[^A-Za-z0-9]+/g, "-")}.csv`;
  link.click();
  state.textContent = `Saved as ${link.download}: send that file back.`;
});
takeUp();
tell();
