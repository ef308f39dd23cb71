import { execFileSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import type { Sharp } from 'sharp';

export const FORMATS = ['jpg', 'png', 'tif', 'webp', 'avif'] as const;

/** What no published picture may hold: tags of these groups, and words planted in them. */
export const CARRIED =
  /GPS|EXIF|IFD\d|XMP|IPTC|Photoshop|ICC[_-]Profile|ICC-header|Comment|INVENTED|SECRET|Thumbnail|MakerNote|Serial|holiday/i;

/**
 * An AVIF is turned by a box of its own (irot, ISO/IEC 23008-12 §6.5.10), whatever its EXIF says. Writes a picture in every format, lying on its side with a word on how to turn it, and with all a telephone and an
 * editor put in: camera, serial number, an invented place in the North Sea, XMP, IPTC, a comment, a maker note, a
 * thumbnail. exiftool, an outside program, puts them there.
 */
export async function writeLaden(upright: Sharp, folder: string): Promise<readonly string[]> {
  const turned = upright.clone().rotate(90);
  const thumbnail = join(folder, 'thumbnail.thm');
  await writeFile(thumbnail, await upright.clone().resize(160).jpeg().toBuffer());
  const files = FORMATS.map((format) => `holiday.${format}`);
  for (const file of files) {
    const picture = turned.clone();
    await (file.endsWith('avif') ? picture.withMetadata({ orientation: 8 }).avif({ effort: 0, quality: 90, chromaSubsampling: '4:4:4' }) : file.endsWith('webp') ? picture.webp({ quality: 95, effort: 0 }) : picture).toFile(join(folder, file)); // prettier-ignore
  }
  const tags = [
    '-Make=INVENTED CAMERA', '-Model=INVENTED MODEL', '-SerialNumber=SECRET-4711', '-ImageDescription=taken at home SECRET',
    '-GPSLatitude=54', '-GPSLatitudeRef=N', '-GPSLongitude=3', '-GPSLongitudeRef=E', '-XMP:Creator=SECRET keeper',
    '-XMP:City=SECRET town', '-IPTC:City=SECRET town', '-IPTC:By-line=SECRET keeper', '-Comment=SECRET comment',
    '-UserComment=SECRET words', '-Orientation#=8',
  ]; // prettier-ignore
  execFileSync('exiftool', [
    '-q', '-m', '-overwrite_original', ...tags, `-ThumbnailImage<=${thumbnail}`,
    ...files.map((file) => join(folder, file)),
  ], { stdio: ['ignore', 'ignore', 'ignore'] }); // prettier-ignore
  return files;
}

/** Everything exiftool sees in the files of folders, one text a file, in the order of their names. */
export function seenByExiftool(folders: readonly string[]): readonly { file: string; seen: string }[] {
  const words = ['-j', '-G1', '-a', '-u', '-r', ...folders];
  const all = JSON.parse(execFileSync('exiftool', words, { encoding: 'utf8' })) as Record<string, unknown>[];
  return all.map((tags) => ({
    file: String(tags['SourceFile']),
    seen: JSON.stringify(Object.entries(tags).filter(([name]) => !/^(?:SourceFile|System:|ExifTool:)/.test(name))),
  }));
}

/** Writes these very pixels, without loss where the format can, with the profile of Display P3, which says what they mean. exiftool puts it in, and into an AVIF the encoder. */
export async function writeWide(pixels: Sharp, file: string): Promise<void> {
  const bare = await pixels.clone().png().toBuffer();
  const p3 = await sharp({ create: { width: 8, height: 8, channels: 3, background: 'red' } }).withIccProfile('p3').png().toBuffer(); // prettier-ignore
  const { icc } = await sharp(p3).metadata();
  if (icc === undefined) throw new Error('The profile was not written.');
  if (file.endsWith('avif')) {
    // Its pixels are taken as they are by what reads it, and written as they are by what keeps its profile.
    await sharp(tagged(bare, icc)).keepIccProfile().avif({ effort: 0, quality: 100, chromaSubsampling: '4:4:4' }).toFile(file); // prettier-ignore
    return;
  }
  const picture = sharp(bare);
  await (file.endsWith('jpg') ? picture.jpeg({ quality: 100, chromaSubsampling: '4:4:4' }) : file.endsWith('webp') ? picture.webp({ lossless: true, effort: 0 }) : file.endsWith('tif') ? picture.tiff({ compression: 'deflate' }) : picture).toFile(file); // prettier-ignore
  const profile = `${file}.icc`;
  await writeFile(profile, icc);
  execFileSync('exiftool', ['-q', '-overwrite_original', `-ICC_Profile<=${profile}`, file]);
}

/** A PNG of these very pixels with a profile that says what they mean. */
function tagged(png: Buffer, icc: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from('iCCPwide\0\0', 'latin1'), deflateSync(icc)]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(body.length - 4);
  sum.writeUInt32BE(crc32(body));
  // After the signature and the first chunk.
  return Buffer.concat([png.subarray(0, 33), length, body, sum, png.subarray(33)]);
}
