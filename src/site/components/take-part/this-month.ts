/** Marks the month that it is in a table of months. */
const row = document.querySelector<HTMLElement>(`.months-table [data-month="${new Date().getMonth()}"]`);
row?.classList.add("now");
row?.querySelector("th")?.setAttribute("aria-current", "date");
