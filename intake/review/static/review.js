// Keys, and a word before typed text is lost. Every page works without this file.
"use strict";

(() => {
  const at = (id) => document.getElementById(id);
  const form = at("work");
  const rows = [...document.querySelectorAll("a.open")];
  const keysOn = at("keys-on");
  const REMEMBERED = "bendreply-keys";

  if (keysOn) {
    keysOn.checked = localStorage.getItem(REMEMBERED) !== "off";
    keysOn.addEventListener("change", () => {
      localStorage.setItem(REMEMBERED, keysOn.checked ? "on" : "off");
    });
  }

  const focus = (id) => {
    const one = at(id);
    if (!one) return false;
    one.focus();
    one.scrollIntoView({ block: "center" });
    if (one.select && one.tagName === "INPUT") one.select();
    return true;
  };
  const follow = (selector) => {
    const link = document.querySelector(selector);
    if (link) link.click();
    return Boolean(link);
  };

  // In the list, n and p go from line to line; a and s open the one that has the focus.
  const current = () => rows.indexOf(document.activeElement);
  const step = (by) => {
    const next = rows[Math.min(rows.length - 1, Math.max(0, current() + by))];
    if (next) next.focus();
    return Boolean(next);
  };
  const open = (place) => {
    const line = rows[Math.max(0, current())];
    if (line) location.href = `${line.href}#${place}`;
    return Boolean(line);
  };

  const inList = {
    n: () => step(1),
    p: () => (current() < 0 ? step(1) : step(-1)),
    a: () => open("approve"),
    s: () => open("why"),
    "/": () => focus("text"),
  };
  const inInquiry = {
    n: () => follow("a[rel=next]"),
    p: () => follow("a[rel=prev]"),
    a: () => focus("approve"),
    s: () => focus("why"),
    e: () => focus("body"),
    f: () => focus("od-1"),
    w: () => follow("#to-list"),
  };
  const keys = form ? inInquiry : inList;

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
    const typing = event.target.closest("input:not([type=checkbox]), textarea, select");
    if (typing) {
      if (event.key === "Escape") typing.blur();
      return;
    }
    if (!keysOn || !keysOn.checked) return;
    let done = false;
    if (event.key === "?") {
      at("keys").open = !at("keys").open;
      if (at("keys").open) at("keys").scrollIntoView();
      done = true;
    } else if (Object.hasOwn(keys, event.key)) {
      done = keys[event.key]();
    }
    if (done) event.preventDefault();
  });

  if (location.hash === "#approve" || location.hash === "#why") focus(location.hash.slice(1));

  if (form) {
    let touched = false;
    form.addEventListener("input", () => { touched = true; });
    document.addEventListener("submit", (event) => {
      if (event.target === form) touched = false;
    });
    window.addEventListener("beforeunload", (event) => {
      if (touched) event.preventDefault();
    });
  }
})();
