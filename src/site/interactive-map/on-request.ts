/** Shows the button of each interactive map on the page; the map itself is fetched when the button is pressed. */
for (const place of document.querySelectorAll<HTMLElement>(".zoom-map")) offer(place);

function offer(place: HTMLElement): void {
  const opener = place.querySelector<HTMLElement>(".zoom-open");
  const button = place.querySelector<HTMLButtonElement>("[data-open]");
  const trouble = place.querySelector<HTMLElement>("[data-trouble]");
  const template = place.querySelector("template");
  if (!opener || !button || !trouble || !template) return;
  opener.hidden = false;
  button.addEventListener("click", () => {
    button.disabled = true;
    trouble.hidden = true;
    place.append(template.content.cloneNode(true));
    const panel = place.querySelector<HTMLElement>(".zoom-panel");
    if (!panel) return;
    const close = () => {
      panel.remove();
      button.disabled = false;
      opener.hidden = false;
      button.focus();
    };
    opener.hidden = true;
    import("./open-map.ts")
      .then(({ openMap }) =>
        openMap(panel, { folder: place.dataset["folder"] ?? "/map/", slug: place.dataset["slug"] ?? "", close }),
      )
      .catch((error: unknown) => {
        close();
        trouble.hidden = false;
        trouble.textContent = `The map that zooms could not be opened here (${error instanceof Error ? error.message : String(error)}). The map above shows the same squares of 10 km.`;
      });
  });
}
