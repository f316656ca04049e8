// All the script there is: a page that waits asks how far it is, and a finger can sign. Everything works without.
"use strict";
document.documentElement.classList.add("scripted");

const waiting = document.querySelector("[data-progress]");
if (waiting) {
  const EVERY_MS = 700;
  const ask = async () => {
    try {
      const answer = await fetch(waiting.dataset.progress, { headers: { Accept: "text/html" }, redirect: "error" });
      if (answer.status === 204) {
        location.reload();
        return;
      }
      if (answer.ok) {
        // Text only, so that the answer cannot bring markup of its own.
        const text = new DOMParser().parseFromString(await answer.text(), "text/html").body.textContent.trim();
        if (waiting.textContent.trim() !== text) {
          waiting.textContent = text;
        }
      }
    } catch {
      // The network is gone for a moment; asked again.
    }
    setTimeout(ask, EVERY_MS);
  };
  setTimeout(ask, EVERY_MS);
}

const signing = document.querySelector("[data-signing]");
if (signing) {
  const canvas = signing.querySelector("canvas");
  const pen = canvas.getContext("2d");
  const kept = document.querySelector("input[name=signature]");
  let down = false;
  const at = (event) => {
    const box = canvas.getBoundingClientRect();
    return [((event.clientX - box.left) * canvas.width) / box.width, ((event.clientY - box.top) * canvas.height) / box.height];
  };
  signing.hidden = false;
  pen.lineWidth = 4;
  pen.lineCap = "round";
  pen.strokeStyle = "#17202a";
  if (kept.value) {
    // Signed already, on a form that came back.
    const drawn = new Image();
    drawn.addEventListener("load", () => pen.drawImage(drawn, 0, 0));
    drawn.src = kept.value;
  }
  canvas.addEventListener("pointerdown", (event) => {
    down = true;
    canvas.setPointerCapture(event.pointerId);
    pen.beginPath();
    pen.moveTo(...at(event));
  });
  canvas.addEventListener("pointermove", (event) => {
    if (down) {
      pen.lineTo(...at(event));
      pen.stroke();
    }
  });
  canvas.addEventListener("pointerup", () => {
    down = false;
    kept.value = canvas.toDataURL("image/png");
  });
  signing.querySelector("button").addEventListener("click", () => {
    pen.clearRect(0, 0, canvas.width, canvas.height);
    kept.value = "";
  });
}

const answer = document.getElementById("answer");
if (answer) {
  answer.focus();
}
