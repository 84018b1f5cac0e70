// Enter goes on to the next field, as a caliper with a keyboard's plug sends it behind each reading.
document.addEventListener("keydown", (event) => {
  const list = event.target.closest?.("[data-next-on-enter]");
  if (!list || event.key !== "Enter" || event.target.tagName !== "INPUT") return;
  event.preventDefault();
  const fields = [...list.querySelectorAll("input")];
  const next = fields[fields.indexOf(event.target) + (event.shiftKey ? -1 : 1)];
  next?.focus();
  next?.select();
});
