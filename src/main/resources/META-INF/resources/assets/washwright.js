// Small help on top of pages that work without it. Nothing here is needed to send a form or read a page.
(function () {
  'use strict';

  // "Not known" sets the rest of its field aside; typing or ticking takes it back. Nothing typed is lost.
  function showNotKnown(box) {
    var group = box.closest('[data-not-known-group]');
    if (!group) return;
    var boxes = Array.from(group.querySelectorAll('[data-not-known]'));
    // "Not known" and "does not apply" exclude each other.
    if (box.checked) boxes.forEach(function (other) { if (other !== box) other.checked = false; });
    group.classList.toggle('set-aside', boxes.some(function (other) { return other.checked; }));
  }

  document.addEventListener('change', function (event) {
    var target = event.target;
    if (target.matches('[data-not-known]')) {
      showNotKnown(target);
    } else if (target.matches('[data-not-known-group] [type="checkbox"]') && target.checked) {
      takeBack(target);
    }
  });

  document.addEventListener('input', function (event) {
    if (event.target.matches('[data-not-known-group] [type="text"]') && event.target.value.trim()) takeBack(event.target);
  });

  function takeBack(part) {
    part.closest('[data-not-known-group]').querySelectorAll('[data-not-known]:checked').forEach(function (box) {
      box.checked = false;
      showNotKnown(box);
    });
  }

  // Rows: <ol data-rows="materials"> with <template data-row> beside it, buttons data-add-row and data-remove-row.
  // Without script the same buttons send the form and the server adds or removes the row.
  document.addEventListener('click', function (event) {
    var add = event.target.closest('[data-add-row]');
    var remove = event.target.closest('[data-remove-row]');
    if (add) addRow(add, event);
    if (remove) removeRow(remove, event);
  });

  function addRow(button, event) {
    var name = button.dataset.addRow;
    var list = document.querySelector('[data-rows="' + name + '"]');
    var model = document.querySelector('template[data-row="' + name + '"]');
    if (!list || !model) return;
    event.preventDefault();
    var next = Number(list.dataset.next || list.children.length);
    list.dataset.next = String(next + 1);
    var row = model.content.cloneNode(true);
    numbered(row, String(next));
    list.appendChild(row);
    prepare(list.lastElementChild);
    focusOn(list.lastElementChild.querySelector('input:not([type="hidden"]), select, textarea'));
    say('Row added.');
  }

  function numbered(part, number) {
    part.querySelectorAll('*').forEach(function (element) {
      Array.from(element.attributes).forEach(function (attribute) {
        if (attribute.value.includes('__n__')) attribute.value = attribute.value.replaceAll('__n__', number);
      });
    });
  }

  function removeRow(button, event) {
    var row = button.closest('li');
    var list = row && row.closest('[data-rows]');
    if (!list) return;
    event.preventDefault();
    list.dataset.next = list.dataset.next || String(list.children.length);
    var near = row.nextElementSibling || row.previousElementSibling;
    row.remove();
    focusOn((near && near.querySelector('[data-remove-row]')) ||
      document.querySelector('[data-add-row="' + list.dataset.rows + '"]'));
    say('Row removed.');
  }

  // A form or button with data-confirm asks before it acts.
  document.addEventListener('submit', function (event) {
    var asker = (event.submitter && event.submitter.closest('[data-confirm]')) || event.target.closest('[data-confirm]');
    if (asker && !window.confirm(asker.dataset.confirm)) {
      event.preventDefault();
      event.stopPropagation();
    }
  }, true);

  // Details named by data-remember stay as the reader left them, on this page and in this tab.
  function memory(details) {
    return 'open:' + location.pathname + ':' + details.dataset.remember;
  }

  document.addEventListener('toggle', function (event) {
    if (!event.target.matches || !event.target.matches('details[data-remember]') || printing) return;
    try {
      sessionStorage.setItem(memory(event.target), event.target.open ? 'yes' : 'no');
    } catch (storageRefused) { /* then it is simply not remembered */ }
  }, true);

  function recall(details) {
    try {
      var kept = sessionStorage.getItem(memory(details));
      if (kept) details.open = kept === 'yes';
    } catch (storageRefused) { /* as the server wrote it */ }
  }

  // A link into closed details opens them, so that every reason can be reached.
  function openAround(hash) {
    var target = hash.length > 1 && document.getElementById(decodeURIComponent(hash.slice(1)));
    for (var part = target; part; part = part.parentElement) {
      if (part.tagName === 'DETAILS') part.open = true;
    }
    if (target) {
      target.scrollIntoView();
      if (target.hasAttribute('tabindex')) target.focus({ preventScroll: true });
    }
  }
  window.addEventListener('hashchange', function () { openAround(location.hash); });

  // Paper shows everything.
  var printing = false;
  var opened = [];
  window.addEventListener('beforeprint', function () {
    printing = true;
    opened = Array.from(document.querySelectorAll('details:not([open])'));
    opened.forEach(function (details) { details.open = true; });
  });
  window.addEventListener('afterprint', function () {
    opened.forEach(function (details) { details.open = false; });
    opened = [];
    setTimeout(function () { printing = false; }, 0);
  });

  // After a swap the focus goes where the new part asks for it, else stays; if its element went, to the part itself.
  var held = null;
  document.addEventListener('htmx:beforeSwap', function () {
    held = document.activeElement && document.activeElement.id;
  });
  document.addEventListener('htmx:afterSettle', function (event) {
    var part = event.detail.elt;
    prepare(part);
    var asked = part.matches('[data-focus]') ? part : part.querySelector('[data-focus]');
    if (asked) {
      focusOn(asked);
    } else if (document.activeElement === document.body) {
      focusOn((held && document.getElementById(held)) || part);
    }
  });

  function focusOn(element) {
    if (!element) return;
    if (!element.matches('a[href], button, input, select, textarea, [tabindex]')) element.setAttribute('tabindex', '-1');
    element.focus();
  }

  function say(text) {
    var voice = document.getElementById('said');
    if (voice) voice.textContent = text;
  }

  function prepare(part) {
    part.querySelectorAll('[data-not-known]').forEach(showNotKnown);
    part.querySelectorAll('details[data-remember]').forEach(recall);
  }

  prepare(document);
  if (location.hash) openAround(location.hash);
  else focusOn(document.querySelector('[data-focus]'));
})();
