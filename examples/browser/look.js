// What a page looks like to its readers.
(() => {
	const say = e => `${e.tagName.toLowerCase()}: ${e.textContent.trim().replace(/\s+/g, " ").slice(0, 60)}`;
	const all = [...document.body.querySelectorAll("*")];
	const own = e => [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim());
	const root = document.documentElement;
	const cut = all.filter(e => e.scrollWidth > e.clientWidth && e.clientWidth > 0 || e.getBoundingClientRect().right > root.clientWidth + 0.5).map(say);
	if (root.scrollWidth > root.clientWidth) cut.push(`page: ${root.scrollWidth} of ${root.clientWidth}`);
	// a word broken in two stands on two lines
	const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let n; (n = words.nextNode());) {
		for (const m of n.textContent.matchAll(/[^\s\-–]+/g)) {
			const range = document.createRange();
			range.setStart(n, m.index);
			range.setEnd(n, m.index + m[0].length);
			const tops = new Set([...range.getClientRects()].map(r => Math.round(r.top)));
			if (tops.size > 1) cut.push(`word: ${m[0]}`);
		}
	}
	// contrast as WCAG 2.1 works it out
	const parse = c => c.match(/[\d.]+/g).map(Number);
	const light = c => {
		const [r, g, b] = parse(c).map(v => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
		return 0.2126 * r + 0.7152 * g + 0.0722 * b;
	};
	const behind = e => {
		for (; e; e = e.parentElement) {
			const c = getComputedStyle(e).backgroundColor, v = parse(c);
			if (v.length < 4 || v[3] > 0) return c;
		}
		return "rgb(255, 255, 255)";
	};
	const ratio = e => {
		const a = light(getComputedStyle(e).color), b = light(behind(e));
		return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
	};
	const least = matchMedia("print").matches ? 11 * 96 / 72 : 16;
	const wrong = [...document.querySelectorAll("script")].map(say);
	for (const e of document.querySelectorAll("img")) if (!e.alt) wrong.push("a picture without text");
	for (const e of document.querySelectorAll("th")) if (!e.scope) wrong.push(say(e));
	for (const e of document.querySelectorAll("table")) if (!e.querySelector("thead th")) wrong.push(say(e));
	for (const e of document.querySelectorAll("tbody tr")) if (e.firstElementChild.tagName !== "TH") wrong.push(say(e));
	return {
		Lang: root.lang, Title: document.title,
		Headings: [...document.querySelectorAll("h1,h2,h3,h4,h5,h6")].map(e => Number(e.tagName[1])),
		Cut: cut, Pale: all.filter(e => own(e) && ratio(e) < 7).map(say),
		Small: all.filter(e => own(e) && parseFloat(getComputedStyle(e).fontSize) < least).map(say), Wrong: wrong,
	};
})()
