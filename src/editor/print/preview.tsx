import { useEffect, useState } from "react";
import type { preview } from "./make-files.ts";

type FirstPage = NonNullable<ReturnType<typeof preview>["first"]>;

/** The first page, as it will be printed. Each layer is a picture: nothing in it can run. */
export function FirstPage({ page }: { readonly page: FirstPage }) {
  const percent = (part: number, whole: number) => `${(100 * part) / whole}%`;
  const { width_mm, height_mm } = page;
  return (
    <div
      className="page"
      style={{ aspectRatio: `${width_mm} / ${height_mm}` }}
      role="img"
      aria-label="The first page"
    >
      {page.layers.map((layer, index) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: a layer is its place in the stack
          key={index}
          className="page-window"
          style={{
            left: percent(layer.clip.x, width_mm),
            top: percent(layer.clip.y, height_mm),
            width: percent(layer.clip.width, width_mm),
            height: percent(layer.clip.height, height_mm),
          }}
        >
          <SvgPicture
            svg={layer.svg}
            style={{
              left: percent(layer.x - layer.clip.x, layer.clip.width),
              top: percent(layer.y - layer.clip.y, layer.clip.height),
              width: percent(layer.width, layer.clip.width),
              height: percent(layer.height, layer.clip.height),
            }}
          />
        </div>
      ))}
    </div>
  );
}

function SvgPicture(props: { readonly svg: string; readonly style: React.CSSProperties }) {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([props.svg], { type: "image/svg+xml" }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [props.svg]);
  return address ? <img src={address} alt="" style={props.style} /> : null;
}
