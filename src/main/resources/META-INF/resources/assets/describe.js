// Describing a task: searching terms and seeing at once what matters. The form works without either.
(function () {
  'use strict';

  // ---- A choice of many terms becomes a box to type in (ARIA combobox with a list). The choice stays behind it and is sent.
  var many = 0;

  function search(select) {
    if (select.dataset.found || select.closest('template')) return;
    select.dataset.found = 'yes';
    var box = document.createElement('span');
    var input = document.createElement('input');
    var list = document.createElement('ul');
    var name = select.id;
    var listId = 'found-' + (++many);
    box.className = 'find';
    input.type = 'text';
    input.autocomplete = 'off';
    input.spellcheck = false;
    input.placeholder = 'not known';
    input.setAttribute('role', 'combobox');
    input.setAttribute('aria-autocomplete', 'list');
    input.setAttribute('aria-expanded', 'false');
    input.setAttribute('aria-controls', listId);
    ['aria-describedby', 'aria-invalid'].forEach(function (a) {
      if (select.hasAttribute(a)) input.setAttribute(a, select.getAttribute(a));
    });
    list.id = listId;
    list.className = 'find-list';
    list.hidden = true;
    list.setAttribute('role', 'listbox');
    select.before(box);
    box.append(input, list);
    select.hidden = true;
    select.removeAttribute('id');
    input.id = name;
    var label = document.querySelector('label[for="' + CSS.escape(name) + '"]');
    if (label) list.setAttribute('aria-label', label.textContent);

    var options = Array.from(select.options).filter(function (o) { return o.value; }).map(function (o) {
      return { value: o.value, name: o.text, also: o.dataset.also || '', says: o.dataset.says || '',
        words: (o.text + ' ' + o.value + ' ' + (o.dataset.also || '')).toLowerCase(), text: (o.dataset.says || '').toLowerCase() };
    });
    var at = -1;

    function written() {
      var chosen = select.selectedOptions[0];
      input.value = chosen && chosen.value ? chosen.text : '';
    }

    // Names that begin with what was typed, then names and other words that hold it, then what the words mean.
    function rank(option, typed) {
      if (!typed) return 0;
      if (option.name.toLowerCase().startsWith(typed)) return 0;
      var all = typed.split(/\s+/);
      if (all.every(function (w) { return option.words.includes(w); })) return 1;
      return all.every(function (w) { return (option.words + ' ' + option.text).includes(w); }) ? 2 : -1;
    }

    function open(typed) {
      var shown = options.map(function (o) { return { o: o, rank: rank(o, typed) }; })
        .filter(function (r) { return r.rank >= 0; })
        .sort(function (a, b) { return a.rank - b.rank; });
      list.replaceChildren();
      shown.forEach(function (r, i) {
        var item = document.createElement('li');
        item.id = listId + '-' + i;
        item.dataset.value = r.o.value;
        item.setAttribute('role', 'option');
        item.setAttribute('aria-selected', String(select.value === r.o.value));
        item.append(r.o.name);
        var small = [r.o.also && typed && !r.o.name.toLowerCase().includes(typed) ? 'also: ' + r.o.also : '', r.o.says]
          .filter(Boolean).join(' · ');
        if (small) {
          var said = document.createElement('small');
          said.textContent = small;
          item.append(said);
        }
        list.append(item);
      });
      if (!shown.length) {
        var none = document.createElement('li');
        none.className = 'none-found';
        none.setAttribute('role', 'option');
        none.setAttribute('aria-disabled', 'true');
        none.setAttribute('aria-selected', 'false');
        none.textContent = 'No word of this rulebook fits “' + typed + '”.';
        list.append(none);
      }
      list.hidden = false;
      input.setAttribute('aria-expanded', 'true');
      move(typed && shown.length ? 0 : shown.findIndex(function (r) { return r.o.value === select.value; }));
    }

    function close() {
      list.hidden = true;
      at = -1;
      input.setAttribute('aria-expanded', 'false');
      input.removeAttribute('aria-activedescendant');
    }

    function move(to) {
      var items = list.querySelectorAll('[data-value]');
      items.forEach(function (i) { i.classList.remove('at'); });
      at = items.length ? Math.max(-1, Math.min(to, items.length - 1)) : -1;
      if (at < 0) {
        input.removeAttribute('aria-activedescendant');
        return;
      }
      items[at].classList.add('at');
      items[at].scrollIntoView({ block: 'nearest' });
      input.setAttribute('aria-activedescendant', items[at].id);
    }

    function take(value) {
      var changed = select.value !== value;
      select.value = value;
      written();
      close();
      if (changed) select.dispatchEvent(new Event('change', { bubbles: true }));
    }

    // What was typed and is nothing on the list is not lost: the box keeps it marked until it is mended.
    function leave() {
      var typed = input.value.trim().toLowerCase();
      if (!typed) take('');
      else {
        var same = options.find(function (o) {
          return o.name.toLowerCase() === typed || o.value === typed ||
            o.also.toLowerCase().split(', ').includes(typed);
        });
        if (same) take(same.value);
        else if (!select.selectedOptions[0] || select.selectedOptions[0].text.toLowerCase() !== typed) written();
      }
      close();
    }

    input.addEventListener('input', function () { open(input.value.trim().toLowerCase()); });
    input.addEventListener('click', function () { if (list.hidden) open(''); });
    input.addEventListener('blur', leave);
    input.addEventListener('keydown', function (event) {
      var shut = list.hidden;
      switch (event.key) {
        case 'ArrowDown': if (shut) open(''); else move(at + 1); break;
        case 'ArrowUp': if (shut) open(''); else move(Math.max(0, at - 1)); break;
        case 'Home': if (shut) return; move(0); break;
        case 'End': if (shut) return; move(options.length); break;
        case 'PageDown': if (shut) return; move(at + 8); break;
        case 'PageUp': if (shut) return; move(Math.max(0, at - 8)); break;
        case 'Escape': if (shut && !input.value) return; if (shut) take(''); else { written(); close(); } break;
        case 'Enter':
          if (shut) return;
          var item = list.querySelectorAll('[data-value]')[at];
          if (item) take(item.dataset.value); else leave();
          break;
        case 'Tab':
          var chosen = !shut && input.value.trim() && list.querySelectorAll('[data-value]')[at];
          if (chosen) take(chosen.dataset.value);
          return;
        default: return;
      }
      event.preventDefault();
    });
    list.addEventListener('mousedown', function (event) {
      event.preventDefault();
      var item = event.target.closest('[data-value]');
      if (item) take(item.dataset.value);
    });
    written();
  }

  function prepare(part) {
    part.querySelectorAll('select[data-find]').forEach(search);
  }

  // ---- What matters is asked anew a moment after each answer; places on the page are filled in, nothing typed is touched.
  var form = document.querySelector('form[data-live]');
  var waiting = 0;
  var asked = 0;

  function ask() {
    var mine = ++asked;
    var data = new URLSearchParams();
    new FormData(form).forEach(function (value, key) { if (key !== 'do') data.append(key, value); });
    data.append('do', 'look');
    fetch(form.action, { method: 'POST', body: data, headers: { Accept: 'text/html' }, credentials: 'same-origin' })
      .then(function (answer) { return answer.ok ? answer.text() : ''; })
      .then(function (text) { if (text && mine === asked) fill(new DOMParser().parseFromString(text, 'text/html')); })
      .catch(function () { /* the page stays as it is, and the button asks again */ });
  }

  function fill(fresh) {
    // Rows taken out in the browser leave gaps that the server closes; then places can't be told apart by name.
    var rows = function (page) { return Array.from(page.querySelectorAll('.rows > li input[name$=".row"]')).map(function (i) { return i.name; }).join(); };
    if (rows(document) !== rows(fresh)) return;
    ['data-note', 'data-tally', 'data-hint'].forEach(function (kind) {
      fresh.querySelectorAll('[' + kind + ']').forEach(function (from) {
        var to = document.querySelector('[' + kind + '="' + CSS.escape(from.getAttribute(kind)) + '"]');
        if (!to) return;
        if (to.innerHTML !== from.innerHTML) to.innerHTML = from.innerHTML;
        to.className = from.className;
      });
    });
    fresh.querySelectorAll('details[data-fold][open]').forEach(function (from) {
      var to = document.querySelector('details[data-fold="' + CSS.escape(from.dataset.fold) + '"]');
      if (to && !to.dataset.shut) to.open = true;
    });
    ['first', 'contents'].forEach(function (id) {
      var to = document.getElementById(id);
      var from = fresh.getElementById(id);
      if (to && from && !to.contains(document.activeElement)) to.innerHTML = from.innerHTML;
    });
  }

  if (form) {
    form.addEventListener('change', function () {
      clearTimeout(waiting);
      waiting = setTimeout(ask, 500);
    });
    // A fold that its reader closed stays closed.
    form.addEventListener('click', function (event) {
      var summary = event.target.closest('summary');
      var fold = summary && summary.parentElement;
      if (fold && fold.dataset.fold) fold.dataset.shut = fold.open ? 'yes' : '';
    });
    new MutationObserver(function (changes) {
      changes.forEach(function (c) { c.addedNodes.forEach(function (n) { if (n.nodeType === 1) prepare(n); }); });
    }).observe(form, { childList: true, subtree: true });
    prepare(form);
  }
})();
