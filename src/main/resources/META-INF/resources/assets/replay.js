// The replay by arrow keys, its steps said aloud, and marks that can be clicked. The page works without any of it.
(function () {
  'use strict';

  document.addEventListener('keydown', function (event) {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    var id = { ArrowRight: 'replay-next', ArrowLeft: 'replay-back' }[event.key];
    var target = event.target;
    if (!id || !document.getElementById('replay') || target.closest('input, select, textarea, summary')) return;
    var link = document.getElementById(id);
    if (!link || !link.href) return;
    event.preventDefault();
    link.focus();
    link.click();
  });

  document.addEventListener('click', function (event) {
    var mark = event.target.closest && event.target.closest('.mark[data-step]');
    var form = document.querySelector('.replay-jump');
    if (!mark || !form) return;
    form.elements.step.value = mark.dataset.step;
    form.requestSubmit();
  });

  document.addEventListener('htmx:afterSettle', function (event) {
    var part = event.detail.elt;
    var voice = document.getElementById('said');
    if (voice && part.dataset.announce) voice.textContent = part.dataset.announce;
  });
})();
