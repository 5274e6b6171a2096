/** Shows the button of each interactive map on the page; the map itself is fetched when the button is pressed. */
for (const place of document.querySelectorAll<HTMLElement>(".zoom-map")) offer(place);

function offer(place: HTMLElement): void {
  const opener = place.querySelector<HTMLElement>(".zoom-open");
  const button = place.querySelector<HTMLButtonElement>("[data-open]");
  const trouble = place.querySelector<HTMLElement>("[data-trouble]");
  if (!opener || !button || !trouble) return;
  opener.hidden = false;
  const words = button.textContent;
  const show = (open: boolean) => {
    button.disabled = open;
    button.textContent = open ? "Opening the map …" : words;
  };
  button.addEventListener("click", () => {
    show(true);
    trouble.hidden = true;
    const close = () => {
      place.querySelector(".zoom-panel")?.remove();
      show(false);
      opener.hidden = false;
      button.focus();
    };
    const request = {
      folder: place.dataset["folder"] ?? "/map/",
      slug: place.dataset["slug"] ?? "",
      shown: (panel: HTMLElement) => {
        place.append(panel);
        opener.hidden = true;
        panel.focus();
      },
      close,
    };
    import("./open-map.ts")
      .then(({ openMap }) => openMap(request))
      .catch((error: unknown) => {
        close();
        trouble.hidden = false;
        trouble.textContent = `The map that zooms could not be opened here (${error instanceof Error ? error.message : String(error)}). The map above shows the same squares of 10 km.`;
      });
  });
}
