/** Shows the button of each interactive map on the page; the map itself is fetched when the button is pressed. */
for (const place of document.querySelectorAll<HTMLElement>(".zoom-map")) offer(place);

function offer(place: HTMLElement): void {
  const opener = place.querySelector<HTMLElement>(".zoom-open");
  const button = place.querySelector<HTMLButtonElement>("[data-open]");
  const trouble = place.querySelector<HTMLElement>("[data-trouble]");
  if (!opener || !button || !trouble) return;
  opener.hidden = false;
  const words = button.textContent;
  const ownPage = place.dataset["own"] !== undefined;
  const show = (open: boolean) => {
    button.disabled = open;
    button.textContent = open ? (button.dataset["opening"] ?? words) : words;
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
      base: document.documentElement.dataset["base"] ?? "/",
      ownPage,
      shown: (panel: HTMLElement) => {
        place.append(panel);
        opener.hidden = true;
        if (!ownPage) panel.focus();
      },
      close,
    };
    Promise.all([import("./open-map.ts"), import("./permalink.ts")])
      .then(([{ openMap }, { placeOfHash }]) => {
        const asked = ownPage ? placeOfHash(location.hash) : {};
        return openMap({ ...request, place: { ...asked, taxon: asked.taxon ?? place.dataset["slug"] ?? "" } });
      })
      .catch((error: unknown) => {
        close();
        const reason = error instanceof Error ? error.message : String(error);
        trouble.hidden = false;
        trouble.textContent = (trouble.dataset["words"] ?? "").replace("…", reason);
      });
  });
  if (ownPage) button.click();
}
