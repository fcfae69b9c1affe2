//! What the camera sees, where an engine lets a test say it.

use std::io::Write as _;
use std::path::Path;

use anyhow::{Result, ensure};

use crate::browser::Browser;

/// A camera, as a page finds it from the next time it asks.
#[derive(Clone, Copy, Debug)]
pub enum Camera<'a> {
    /// The person does not let the page use it.
    Refused,
    /// There is none.
    Missing,
    /// It may be used, and sees something of the engine's own choosing, in which there is no code.
    Anything,
    /// It may be used, and sees these, one after the other and again from the first.
    Sees(&'a [Frame]),
}

/// A picture in shades of grey, 0 black to 255 white, row by row.
#[derive(Clone, Debug)]
pub struct Frame {
    /// Across, in dots; even.
    pub width: usize,
    /// Down, in dots; even.
    pub height: usize,
    /// `width` times `height` of them.
    pub dots: Vec<u8>,
}

impl Browser {
    /// Sets what the camera sees.
    ///
    /// # Errors
    /// When the engine cannot be made to.
    pub async fn set_camera(&self, camera: Camera<'_>) -> Result<()> {
        self.drive.set_camera(&self.client, camera).await
    }
}

/// Writes a film of ten pictures a second in YUV4MPEG2, whose planes of colour are grey. Without
/// pictures it is no film, and what would show it finds none.
pub(crate) fn write_film(path: &Path, frames: &[Frame]) -> Result<()> {
    let mut file = std::io::BufWriter::new(std::fs::File::create(path)?);
    let Some(Frame { width, height, .. }) = frames.first() else { return Ok(file.flush()?) };
    writeln!(file, "YUV4MPEG2 W{width} H{height} F10:1 Ip A1:1 C420jpeg")?;
    for frame in frames {
        let is_alike = (frame.width, frame.height) == (*width, *height);
        ensure!(
            is_alike && frame.dots.len() == width * height,
            "the pictures are of several sizes"
        );
        writeln!(file, "FRAME")?;
        file.write_all(&frame.dots)?;
        file.write_all(&vec![128; width * height / 2])?;
    }
    Ok(file.flush()?)
}
