// A React page that shows the survey, takes it away, and shows it again.
import { useState } from "react";
import { createRoot } from "react-dom/client";

const PROFILE = { format: "hangtrue-profile/1", name: "React Doors", revision: 2 };

function Page() {
  const [shown, show] = useState(true);
  const [line, tell] = useState("");
  return (
    <main>
      <h1>A React page</h1>
      <button id="toggle" onClick={() => show(!shown)}>
        {shown ? "Take the survey away" : "Show the survey"}
      </button>
      {shown && (
        <hangtrue-survey profile={PROFILE} onhangtrue-complete={(event) => tell(event.detail.line)}>
          <a href="tel:+15550100140">+1 555 010 0140</a>
        </hangtrue-survey>
      )}
      <p id="line">{line}</p>
    </main>
  );
}

createRoot(document.getElementById("root")).render(<Page />);
