// The grid of a decision table: keys as in a spreadsheet, checking and saving while one types. The form works without it.
(function () {
  'use strict';
  var form = document.querySelector('[data-sheet]');
  if (!form) return;
  var body = form.querySelector('[data-grid] tbody');
  var state = form.querySelector('[data-state]');
  var says = document.getElementById('row-says');
  var timers = {};
  var asking = null;
  var saving = false;
  var again = false;
  var dirty = false;
  var sentences = {};
  document.querySelectorAll('[data-says]').forEach(function (li) {
    sentences[li.dataset.says] = li.querySelector('span').textContent;
  });

  function rows() { return Array.from(body.rows); }
  function cells(row) { return Array.from(row.querySelectorAll('[data-column]')); }
  function cellOf(target) { return target.closest && target.closest('[data-column]'); }
  function rowOf(part) { return part.closest('tr[data-row]'); }
  function tell(text) { state.textContent = text; }

  // ---- moving

  function goTo(row, column) {
    var cell = row && cells(row)[column];
    if (!cell) return;
    cell.focus();
    rest(cell);
  }

  // A cell at rest is wholly selected: typing writes anew, arrows move. An open cell is edited in place.
  function rest(cell) {
    delete cell.dataset.open;
    cell.dataset.before = cell.value;
    cell.select();
  }

  function openCell(cell) {
    cell.dataset.open = 'yes';
    var end = cell.value.length;
    cell.setSelectionRange(end, end);
  }

  body.addEventListener('focusin', function (event) {
    var cell = cellOf(event.target);
    if (!cell) return;
    if (!('before' in cell.dataset)) cell.dataset.before = cell.value;
    if (!mouse) rest(cell);
    grow(cell);
    show(rowOf(cell));
  });
  body.addEventListener('focusout', function (event) {
    var cell = cellOf(event.target);
    if (cell) { delete cell.dataset.open; delete cell.dataset.before; }
  });
  var mouse = false;
  body.addEventListener('pointerdown', function (event) {
    mouse = true;
    var cell = cellOf(event.target);
    if (cell) cell.dataset.open = 'yes';
  });
  document.addEventListener('pointerup', function () { mouse = false; });

  body.addEventListener('keydown', function (event) {
    var cell = cellOf(event.target);
    if (!cell || event.isComposing) return;
    var row = rowOf(cell);
    var all = rows();
    var at = all.indexOf(row);
    var column = cells(row).indexOf(cell);
    var open = cell.dataset.open === 'yes';
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      act('below', row);
    } else if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault();
      act(event.key === 'ArrowUp' ? 'up' : 'down', row);
      goTo(row, column);
    } else if (event.key === 'Enter' && !event.shiftKey) {
      event.preventDefault();
      if (open) {
        if (all[at + 1]) goTo(all[at + 1], column); else rest(cell);
      } else {
        openCell(cell);
      }
    } else if (event.key === 'F2') {
      event.preventDefault();
      openCell(cell);
    } else if (event.key === 'Escape') {
      event.preventDefault();
      if (open || cell.value !== cell.dataset.before) {
        cell.value = cell.dataset.before;
        rest(cell);
        changed();
      } else {
        document.getElementById('after-rows').focus();
      }
    } else if (!open && !event.ctrlKey && !event.shiftKey && !event.metaKey) {
      var to = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] }[event.key];
      if (to) {
        event.preventDefault();
        goTo(all[at + to[0]], column + to[1]);
      } else if (event.key === 'Home' || event.key === 'End') {
        event.preventDefault();
        goTo(row, event.key === 'Home' ? 0 : cells(row).length - 1);
      }
    }
  });

  // ---- rows

  function renumber() {
    rows().forEach(function (row, n) {
      row.dataset.row = String(n);
      row.id = 'row-' + n;
      row.querySelector('[name^="rf."]').name = 'rf.' + n;
      cells(row).forEach(function (cell) {
        cell.name = 'r.' + n + '.' + cell.dataset.column;
        var wrong = cell.parentElement.querySelector('.cell-wrong');
        wrong.id = 'w-' + n + '-' + cell.dataset.column;
        cell.setAttribute('aria-describedby', wrong.id);
      });
      row.querySelectorAll('[data-act]').forEach(function (b) { b.value = b.dataset.act + '.' + n; });
    });
  }

  function idColumn() {
    var names = Array.from(form.querySelectorAll('thead [name^="c."]'));
    return names.findIndex(function (n) { return n.value === 'id'; });
  }

  function nextId(row) {
    var at = idColumn();
    if (at < 0) return '';
    var ids = rows().map(function (r) { return cells(r)[at].value.trim(); });
    var model = row ? cells(row)[at].value.trim() : '';
    if (!/[0-9]{1,6}$/.test(model)) model = model ? model + '-1' : 'NEW-0';
    var digits = model.match(/[0-9]{1,6}$/)[0];
    var stem = model.slice(0, model.length - digits.length);
    var number = Number(digits);
    var next;
    do {
      number += 1;
      next = stem + String(number).padStart(digits.length, '0');
    } while (ids.includes(next));
    return next;
  }

  // A new row is a copy of another one with its cells emptied; a table without rows asks the server for its first.
  function made(from, keep) {
    var row = from.cloneNode(true);
    row.removeAttribute('data-here');
    row.querySelector('[name^="rf."]').value = '-1';
    row.querySelectorAll('details').forEach(function (d) { d.open = false; });
    row.querySelectorAll('.cell-wrong').forEach(function (w) { w.textContent = ''; });
    var id = nextId(from);
    cells(row).forEach(function (cell, n) {
      cell.value = n === idColumn() ? id : keep ? cells(from)[n].value : '';
      delete cell.dataset.open;
      delete cell.dataset.before;
      cell.removeAttribute('aria-invalid');
      cell.removeAttribute('data-focus');
      cell.parentElement.classList.remove('wrong-cell');
    });
    from.after(row);
    relabel(row);
    return row;
  }

  function relabel(row) {
    var id = cells(row)[Math.max(idColumn(), 0)].value.trim() || 'row ' + (rows().indexOf(row) + 1);
    cells(row).forEach(function (cell) { cell.setAttribute('aria-label', id + ', ' + cell.parentElement.dataset.label); });
    row.querySelector('summary').setAttribute('aria-label', 'Row ' + id);
  }

  function act(what, row) {
    var near;
    if (what === 'below' || what === 'copy') {
      near = made(row, what === 'copy');
    } else if (what === 'up' && row.previousElementSibling) {
      row.previousElementSibling.before(row);
    } else if (what === 'down' && row.nextElementSibling) {
      row.nextElementSibling.after(row);
    } else if (what === 'delete') {
      near = row.nextElementSibling || row.previousElementSibling;
      row.remove();
    }
    renumber();
    changed();
    if (near) goTo(near, what === 'delete' ? 0 : Math.min(1, cells(near).length - 1));
  }

  form.addEventListener('click', function (event) {
    var button = event.target.closest('[data-act]');
    if (!button) return;
    var last = rows()[rows().length - 1];
    var row = button.dataset.act === 'last' ? last : rowOf(button);
    if (!row || button.dataset.act === 'delete' && rows().length === 1) return;
    event.preventDefault();
    var menu = button.closest('details');
    if (menu) menu.open = false;
    act(button.dataset.act === 'last' ? 'below' : button.dataset.act, row);
    if (button.dataset.act === 'up' || button.dataset.act === 'down') goTo(row, 0);
  });
  body.addEventListener('keydown', function (event) {
    var menu = event.key === 'Escape' && event.target.closest('details.row-menu');
    if (menu) { menu.open = false; menu.querySelector('summary').focus(); }
  });

  // ---- checking and saving

  form.addEventListener('input', function (event) {
    var cell = cellOf(event.target);
    if (cell) {
      cell.dataset.open = 'yes';
      grow(cell);
      if (Number(cell.dataset.column) === idColumn()) relabel(rowOf(cell));
    }
    if (event.target.id !== 'new-column') changed();
  });

  function grow(cell) {
    if (cell.tagName !== 'TEXTAREA') return;
    cell.style.height = 'auto';
    cell.style.height = cell.scrollHeight + 2 + 'px';
  }

  function changed() {
    dirty = true;
    tell('not saved yet');
    later('check', 250, check);
    later('save', 700, save);
  }

  function later(name, ms, what) {
    clearTimeout(timers[name]);
    timers[name] = setTimeout(what, ms);
  }

  function send(address, signal) {
    var fields = new URLSearchParams(new FormData(form));
    return fetch(address, {
      method: 'POST',
      body: fields,
      signal: signal,
      headers: { Accept: 'application/json, application/problem+json' }
    });
  }

  function check() {
    if (asking) asking.abort();
    asking = new AbortController();
    send(form.dataset.check, asking.signal)
      .then(function (answer) { return answer.ok ? answer.json().then(mark) : null; })
      .catch(function () { /* a newer check is on its way, or the save will say what is the matter */ });
  }

  function save() {
    if (saving) { again = true; return; }
    saving = true;
    dirty = false;
    tell('saving');
    send(form.dataset.save)
      .then(function (answer) {
        if (answer.ok) return answer.json().then(saved);
        if (answer.status === 412) { leaving = true; form.requestSubmit(form.querySelector('[value="save"]')); return null; }
        dirty = true;
        return answer.json().then(function (problem) {
          var first = problem.errors && problem.errors[0];
          tell('not saved: ' + (first ? first.message + ' ' + first.advice : problem.detail));
        });
      })
      .catch(function () {
        dirty = true;
        tell('not saved: no connection; it is tried again');
        later('save', 5000, save);
      })
      .finally(function () {
        saving = false;
        if (again) { again = false; save(); }
      });
  }

  function saved(answer) {
    document.querySelectorAll('[data-sheet] [name="tag"], [data-tag]').forEach(function (t) { t.value = answer.tag; });
    rows().forEach(function (row, n) {
      if (n < answer.rows.length) row.querySelector('[name^="rf."]').value = String(answer.rows[n]);
    });
    form.querySelectorAll('[name^="cf."]').forEach(function (column, n) { column.value = String(n); });
    if (!dirty) {
      mark(answer);
      tell('saved');
    }
  }

  function mark(answer) {
    var whole = rows();
    body.querySelectorAll('.cell-wrong').forEach(function (w) { w.textContent = ''; });
    body.querySelectorAll('[aria-invalid]').forEach(function (c) { c.removeAttribute('aria-invalid'); });
    body.querySelectorAll('.wrong-cell').forEach(function (c) { c.classList.remove('wrong-cell'); });
    answer.wrong.forEach(function (w) {
      var row = whole[w.row];
      if (w.part !== 'row' || !row) return;
      var cell = w.column >= 0 && row.querySelector('[data-column="' + w.column + '"]');
      var place = cell ? cell.parentElement.querySelector('.cell-wrong') : row.querySelector('[data-row-wrong]');
      place.textContent += w.text + ' ';
      if (cell) {
        cell.setAttribute('aria-invalid', 'true');
        cell.parentElement.classList.add('wrong-cell');
      }
    });
    form.querySelectorAll('[id^="hw-"]').forEach(function (p) {
      var found = answer.wrong.find(function (w) { return w.part === 'head' && 'hw-' + w.word === p.id; });
      p.textContent = found ? found.text : '';
      p.hidden = !found;
    });
    document.querySelector('[data-count]').textContent = answer.count === 0
      ? whole.length + (whole.length === 1 ? ' row' : ' rows') + ', each a sound rule.'
      : answer.count + (answer.count === 1 ? ' thing needs' : ' things need') + ' another look.';
    sentences = answer.sentences;
    list(whole);
    if (document.activeElement && rowOf(document.activeElement)) show(rowOf(document.activeElement));
  }

  function list(whole) {
    var all = document.querySelector('[data-sentences]');
    all.textContent = '';
    whole.forEach(function (row, n) {
      var li = document.createElement('li');
      var name = document.createElement('b');
      name.textContent = row.querySelector('summary').getAttribute('aria-label').replace(/^Row /, '');
      li.append(name, ' ', sentences[n] || 'can’t be read yet.');
      all.append(li);
    });
  }

  function show(row) {
    if (!row) return;
    var name = row.querySelector('summary').getAttribute('aria-label').replace(/^Row /, '');
    var text = name + ': ' + (sentences[row.dataset.row] || 'can’t be read yet.');
    says.hidden = false;
    if (says.textContent !== text) says.textContent = text;
  }

  // ---- leaving

  var leaving = false;
  form.addEventListener('submit', function () { leaving = true; });
  document.addEventListener('visibilitychange', function () {
    if (document.visibilityState === 'hidden' && dirty && !leaving) save();
  });
  window.addEventListener('beforeunload', function (event) {
    if (dirty && !leaving) event.preventDefault();
  });

  document.documentElement.classList.add('scripted');
  body.querySelectorAll('textarea').forEach(grow);
  var here = body.querySelector('[data-here]');
  if (here) goTo(here, 0);
})();
