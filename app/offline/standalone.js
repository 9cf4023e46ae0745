// The end of the script in standalone.html, behind the glue of the page's module. What index.html
// names by its address is text in the file here: each gets an address in memory, and the page's
// module finds it by the same `<meta>` as ever. Then it tells first.js how that went.

{
  const tell = (what, detail) => dispatchEvent(new CustomEvent(what, { detail }));
  try {
    for (const block of document.querySelectorAll("script[data-for]")) {
      const text = new Blob([block.textContent], { type: block.dataset.type });
      document.querySelector(`meta[name="${block.dataset.for}"]`).content = URL.createObjectURL(text);
      block.remove();
    }
    const bytes = (block) => Uint8Array.from(atob(block.textContent), (letter) => letter.charCodeAt(0));
    for (const block of document.querySelectorAll("script[data-part]")) {
      contained.set(block.dataset.part, bytes(block));
      block.remove();
    }
    const block = document.querySelector("script[data-module]");
    await __wbg_init({ module_or_path: bytes(block) });
    block.remove();
    tell("page-mounted");
  } catch (error) {
    console.error(error);
    tell("page-failed", typeof WebAssembly === "object" ? "first-cut" : "first-unable");
  }
}
