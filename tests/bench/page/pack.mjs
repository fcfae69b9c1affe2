// The link and the QR code of an order, as JSON packed by lz-string.
//
// Both do: the order to JSON, the JSON packed, the link made, the link as a QR code at level M with
// four modules of quiet zone, as the text of an SVG. Neither does: a version, check characters, a
// code that a scanner reads in fewer modules because its alphabet is the QR code's own.

import LZString from 'lz-string';
import QRCode from 'qrcode';
import { correction, generate } from 'lean-qr';
import { toSvgSource } from 'lean-qr/extras/svg';

export const link = (order, base) =>
  `${base}#${LZString.compressToEncodedURIComponent(JSON.stringify(order))}`;

export const usualPicture = (order, base) => {
  let svg;
  QRCode.toString(link(order, base), { type: 'svg', errorCorrectionLevel: 'M', margin: 4 },
    (error, text) => {
      if (error) throw error;
      svg = text;
    });
  return svg;
};

export const leanPicture = (order, base) =>
  toSvgSource(generate(link(order, base), { minCorrectionLevel: correction.M }));
