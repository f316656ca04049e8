// The car on the screen answers at once: each turn of a control fetches the page that the form would lead to, and only its
// answer is put in place. Without script the button does the same.
"use strict";
const trying = document.querySelector("form[data-live]");
if (trying) {
  const said = document.getElementById("live-said");
  let latest = 0;
  trying.addEventListener("change", async () => {
    const mine = ++latest;
    const address = trying.action + "?" + new URLSearchParams(new FormData(trying));
    try {
      const answer = await fetch(address, { headers: { Accept: "text/html" }, redirect: "error" });
      if (mine !== latest || !answer.ok) {
        return;
      }
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const live = page.getElementById(trying.dataset.live);
      const old = document.getElementById(trying.dataset.live);
      const left = [...old.querySelectorAll(".drawn")].map((drawn) => drawn.scrollLeft);
      old.replaceWith(document.adoptNode(live));
      live.querySelectorAll(".drawn").forEach((drawn, at) => (drawn.scrollLeft = left[at] ?? 0));
      said.textContent = [...live.querySelectorAll(".stand, .danger .claim h3")].map((each) => each.textContent.trim()).join(". ");
      history.replaceState(null, "", address);
    } catch {
      trying.querySelector("button").style.display = "inline-block";
    }
  });
}
