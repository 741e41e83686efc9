// The few things that only the browser can do: its address, its printer, its files, the focus.
(() => {
  "use strict";
  let page;
  let kept = "";

  const day = () => new Date().toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });

  // The sheet is made when it is printed, by the button or by the browser's own menu, and is on paper only.
  const fill = () => {
    const [style, content] = page.invokeMethod("Sheet", day());
    document.getElementById("sheet-style").textContent = style;
    document.getElementById("sheet").innerHTML = content;
  };
  const clear = () => {
    document.getElementById("sheet-style").textContent = "";
    document.getElementById("sheet").textContent = "";
  };

  // A link within the page moves the focus and leaves the circuit in the address.
  const follow = (event) => {
    const link = event.target.closest && event.target.closest("a[href^='#']");
    const target = link && document.getElementById(decodeURIComponent(link.getAttribute("href").slice(1)));
    if (target) {
      event.preventDefault();
      const folded = target.closest("details");
      if (folded) folded.open = true;
      target.scrollIntoView({ block: "start" });
      target.focus({ preventScroll: true });
    }
  };

  window.circuitPage = {
    start(reference) {
      page = reference;
      window.addEventListener("beforeprint", fill);
      window.addEventListener("afterprint", clear);
      document.addEventListener("click", follow);
      window.addEventListener("hashchange", () => {
        const address = location.hash.slice(1);
        if (address !== kept) page.invokeMethod("Load", address);
      });
      return location.hash.slice(1);
    },
    // The moment of the first answer, for whoever measures.
    ready() { performance.mark("first answer"); },
    keep(address) {
      kept = address;
      if (location.hash.slice(1) !== address) history.replaceState(null, "", address ? "#" + address : location.pathname + location.search);
    },
    print() { window.print(); },
    save(name, text) {
      const link = document.createElement("a");
      link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
      link.download = name;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 1000);
    },
  };
})();
