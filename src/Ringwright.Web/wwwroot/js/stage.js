// What fingers and mouse do on the stage: points that are dragged, pieces that are painted. The page's own server decides what
// becomes of it; here places are only turned into the drawing's millimetres, one call under way at a time.
(() => {
  const place = (svg, event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());

  // Sends the newest that waits when the last call has come back. At the end what waits is sent at once: calls arrive in the
  // order they were made, so whatever the hand does next, such as undo, comes after it.
  const sender = (call) => {
    let waiting = null;
    let busy = false;
    const pump = async () => {
      if (busy) return;
      busy = true;
      while (waiting) {
        const next = waiting;
        waiting = null;
        await call(next).catch(() => {});
      }
      busy = false;
    };
    return {
      put(merge) {
        waiting = merge(waiting);
        pump();
      },
      end() {
        if (waiting) call(waiting).catch(() => {});
        waiting = null;
      },
    };
  };

  const drag = (svg, net, handle, down) => {
    const id = handle.dataset.handle;
    const moves = sender((at) => net.invokeMethodAsync("Dragged", id, at.x, at.y));
    const start = place(svg, down);
    const box = handle.querySelector(".handle-dot").getBBox();
    const off = { x: box.x + box.width / 2 - start.x, y: box.y + box.height / 2 - start.y };
    const move = (event) => {
      const at = place(svg, event);
      moves.put(() => ({ x: at.x + off.x, y: at.y + off.y }));
    };
    follow(svg, down, move, () => {
      moves.end();
      net.invokeMethodAsync("Dropped").catch(() => {});
    });
    handle.focus({ preventScroll: true });
  };

  const stroke = (svg, net, down) => {
    let first = true;
    const strokes = sender((places) => {
      const begins = first;
      first = false;
      return net.invokeMethodAsync("Stroke", places, begins);
    });
    let last = place(svg, down);
    strokes.put(() => [last.x, last.y]);
    const paints = svg.dataset.paint === "on";
    if (!paints) return;
    const move = (event) => {
      const at = place(svg, event);
      const steps = Math.min(200, Math.ceil(Math.hypot(at.x - last.x, at.y - last.y) / (svg.viewBox.baseVal.width / 300)));
      const between = [];
      for (let i = 1; i <= steps; i++) between.push(last.x + ((at.x - last.x) * i) / steps, last.y + ((at.y - last.y) * i) / steps);
      last = at;
      strokes.put((waiting) => [...(waiting ?? []), ...between]);
    };
    follow(svg, down, move, () => {
      strokes.end();
      net.invokeMethodAsync("Dropped").catch(() => {});
    });
  };

  const follow = (svg, down, move, end) => {
    svg.setPointerCapture(down.pointerId);
    const stop = () => {
      svg.removeEventListener("pointermove", move);
      svg.removeEventListener("pointerup", stop);
      svg.removeEventListener("pointercancel", stop);
      end();
    };
    svg.addEventListener("pointermove", move);
    svg.addEventListener("pointerup", stop);
    svg.addEventListener("pointercancel", stop);
  };

  window.ringwright.stage = (svg, net) => {
    svg.addEventListener("pointerdown", (event) => {
      if (event.button !== 0 || !event.isPrimary) return;
      const handle = event.target.closest("[data-handle]");
      if (handle) {
        event.preventDefault();
        drag(svg, net, handle, event);
      } else if (svg.closest(".view-flat")) {
        if (svg.dataset.paint === "on") event.preventDefault();
        stroke(svg, net, event);
      }
    });
  };
})();
