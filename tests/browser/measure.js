// What a page looks like, measured: texts that lie on each other or are cut off, contrast, headings.
(() => {
  const texts = [];
  const walker = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (!node.data.trim() || !node.parentElement.checkVisibility()) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects())
      texts.push({text: node.data.trim().slice(0, 40), left: box.left, right: box.right,
                  top: box.top, bottom: box.bottom, element: node.parentElement});
  }
  const overlaps = [];
  texts.sort((a, b) => a.top - b.top);
  for (let i = 0; i < texts.length; ++i)
    for (let j = i + 1; j < texts.length && texts[j].top < texts[i].bottom; ++j) {
      const across = Math.min(texts[i].right, texts[j].right) - Math.max(texts[i].left, texts[j].left);
      const down = Math.min(texts[i].bottom, texts[j].bottom) - texts[j].top;
      const lower = Math.min(texts[i].bottom - texts[i].top, texts[j].bottom - texts[j].top);
      if (across > 1 && down > 0.34 * lower) overlaps.push(texts[i].text + " / " + texts[j].text);
    }
  const clipped = [];
  for (const element of document.querySelectorAll("main *")) {
    const style = getComputedStyle(element);
    const hides = style.overflowX !== "visible" || style.overflowY !== "visible";
    const scrolls = style.overflowX === "auto" || style.overflowX === "scroll";
    if (!hides || element.closest("svg")) continue;
    if ((!scrolls && element.scrollWidth > element.clientWidth + 1) ||
        (style.overflowY === "hidden" && element.scrollHeight > element.clientHeight + 1))
      clipped.push(element.textContent.trim().slice(0, 60));
  }
  for (const {element, left, right, text} of texts) {
    const svg = element.closest("svg");
    if (!svg) continue;
    const box = svg.getBoundingClientRect();
    if (left < box.left - 0.5 || right > box.right + 0.5) clipped.push(text);
  }
  const light = (colour) => {
    const [r, g, b] = colour.match(/[\d.]+/g).map(Number).map((value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const faint = [];
  for (const {element, text} of texts) {
    const style = getComputedStyle(element);
    const ink = light(element.closest("svg") ? style.fill : style.color);
    if (1.05 / (ink + 0.05) < 4.5) faint.push(text);
  }
  // A line of a drawing that runs through letters; a letter's box is higher than the letter.
  const struck = [];
  const drawings = new Map();
  for (const seen of texts) {
    const svg = seen.element.closest("svg");
    if (!svg) continue;
    if (!drawings.has(svg))
      drawings.set(svg, [...svg.querySelectorAll(".m, .b, .t")].map((line) => line.getBoundingClientRect()));
    const inset = 0.25 * (seen.bottom - seen.top);
    for (const line of drawings.get(svg))
      if (line.left < seen.right - 0.7 && line.right > seen.left + 0.7 &&
          line.top < seen.bottom - inset && line.bottom > seen.top + inset) {
        struck.push(seen.text);
        break;
      }
  }
  const points = (element) => {
    const svg = element.closest("svg");
    const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
    return parseFloat(getComputedStyle(element).fontSize) * scale * 0.75;
  };
  const least = (elements) => Math.min(...[...elements].map(points));
  const small = texts.filter(({element}) => points(element) < 8.99).map(({text}) => text);
  const cards = [...document.querySelectorAll("article.card")].map((card) => ({
    id: card.id, name: card.querySelector("h2").textContent,
    cut: card.querySelector(".cut strong")?.textContent ?? null,
    height: card.getBoundingClientRect().height * 25.4 / 96, reckoned: +card.dataset.height,
    cut_pt: least(card.querySelectorAll(".cut strong")),
    number_pt: least(card.querySelectorAll(".marks tbody .r, .marks tbody th")),
    step_pt: least(card.querySelectorAll(".steps li")),
    foot: card.querySelector("footer").textContent,
    strips: [...card.querySelectorAll("svg.strip")].map((strip) => strip.getBoundingClientRect().width * 25.4 / 96),
  }));
  const levels = [...document.querySelectorAll("h1,h2,h3,h4")].map((heading) => +heading.tagName[1]);
  return {
    overlaps, clipped, faint, struck, small, cards,
    wide: document.documentElement.scrollWidth > window.innerWidth,
    first: levels.filter((level) => level === 1).length,
    skips: levels.some((level, i) => i > 0 && level > levels[i - 1] + 1),
    unscoped: [...document.querySelectorAll("th:not([scope])")].length,
    nameless: [...document.querySelectorAll("svg:not([aria-hidden])")]
      .filter((svg) => svg.getAttribute("role") !== "img" || !svg.getAttribute("aria-label")).length,
    language: document.documentElement.lang,
    outside: [...document.querySelectorAll("script,img,link,iframe,[src]")].length,
    pwned: typeof window.pwned,
    marks: [...document.querySelectorAll("[data-mark]")].map((mark) => ({
      card: mark.closest("article")?.id, end: mark.dataset.end, name: mark.dataset.mark,
      x: +mark.getAttribute("x"),
      seen: mark.getBoundingClientRect().left, drawing: mark.closest("svg").getBoundingClientRect().left,
      scale: mark.closest("svg").getBoundingClientRect().width / mark.closest("svg").viewBox.baseVal.width,
    })),
    labels: document.querySelectorAll(".label").length,
    texts: texts.length,
  };
})()
