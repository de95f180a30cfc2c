import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./typeface.css";
import "./theme.css";

const page = document.getElementById("page");
if (!page) throw new Error("index.html has no element with the id page");
createRoot(page).render(
  <StrictMode>
    <main>
      <h1>Pigtail</h1>
      <p>Draw, check and document one-off wiring harnesses.</p>
    </main>
  </StrictMode>,
);
