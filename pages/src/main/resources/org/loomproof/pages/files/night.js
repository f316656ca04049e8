// Before anything is painted, so that no bright page flashes under a dash.
"use strict";
if (localStorage.getItem("night") === "on") {
  document.documentElement.dataset.theme = "night";
}
