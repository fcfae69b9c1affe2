//! A frame of steel: four corners, a roof, bows; and what a true tape would show.

use crate::rng::Rng;
use crate::world::{Knock, Opening, World};

/// A frame. Lengths in mm.
#[derive(Clone, Debug)]
pub struct Frame {
    /// Corners as (x, y): low left, low right, high left, high right.
    corners: [(f64, f64); 4],
    bulge: f64,
    sag: f64,
    /// From the sill to the roof skin above the header, at the left, center and right.
    roofs: [f64; 3],
    bows: [f64; 3],
    /// The same where the first bow is.
    inside: f64,
}

fn apart(a: (f64, f64), b: (f64, f64)) -> f64 {
    (a.0 - b.0).hypot(a.1 - b.1)
}

impl Frame {
    /// A frame of `opening` as `world` builds and treats them.
    ///
    /// What a knock bends is `world.knock`'s to say.
    pub fn draw(opening: &Opening, world: &World, rng: &mut Rng) -> Self {
        let times = if rng.chance(world.knocked) { world.knocked_times } else { 1.0 };
        let roof_times = if world.knock == Knock::Everything { times } else { 1.0 };
        let bent = rng.below(5);
        let mut which = 0;
        let [taper, tilt, lean, bulge, sag] =
            [world.taper, world.tilt, world.racking, world.bulge, world.sag].map(|sd| {
                let hit = world.knock != Knock::One || which == bent;
                which += 1;
                rng.normal(if hit { sd * times } else { sd })
            });
        let (w, h) = (opening.width, opening.height);
        let corners = [
            (taper / 2.0, 0.0),
            (w - taper / 2.0, 0.0),
            (lean - taper / 2.0, h - tilt),
            (lean + w + taper / 2.0, h + tilt),
        ];
        let nominal = h + opening.header;
        let roofs = [0; 3].map(|_| nominal + rng.normal(world.header * roof_times));
        let mut bows = [0; 3].map(|_| opening.bow + rng.normal(world.bow * roof_times));
        if rng.chance(world.odd_bows) {
            for bow in bows.iter_mut().skip(1) {
                *bow = (*bow + rng.between(-12.7, 12.7)).max(15.0);
            }
        }
        let inside = roofs[1] + rng.normal(world.roof * roof_times);
        Self { corners, bulge, sag, roofs, bows, inside }
    }

    /// What is between the marks at `spot`.
    #[must_use]
    pub fn length(&self, spot: &str) -> f64 {
        let [low_left, low_right, high_left, high_right] = self.corners;
        let (low, high) = (apart(low_left, low_right), apart(high_left, high_right));
        let (left, right) = (apart(low_left, high_left), apart(low_right, high_right));
        let center = f64::midpoint(left, right) + self.sag;
        match spot {
            "width.low" => low,
            "width.middle" => f64::midpoint(low, high) + self.bulge,
            "width.high" => high,
            "height.left" => left,
            "height.center" => center,
            "height.right" => right,
            // What the header's underside gives up, the header depth gains.
            "header.left" => self.roofs[0] - left,
            "header.center" => self.roofs[1] - center,
            "header.right" => self.roofs[2] - right,
            "bow.first" => self.bows[0],
            "bow.second" => self.bows[1],
            "bow.third" => self.bows[2],
            "diagonal.rising" => apart(low_left, high_right),
            "diagonal.falling" => apart(high_left, low_right),
            "loop.sill_to_roof" => self.inside,
            "loop.sill_to_bow" => self.inside - self.bows[0],
            _ => 0.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::world::Population;

    #[test]
    fn a_true_frame_closes() {
        let still = World::default().noisier(0.0);
        let mut rng = Rng::new(1);
        let opening = Population::Yard.draw(&mut rng);
        let frame = Frame::draw(&opening, &still, &mut rng);
        let (w, h) = (frame.length("width.low"), frame.length("height.left"));
        assert!((frame.length("diagonal.rising") - w.hypot(h)).abs() < 1e-9);
        let closed = h + frame.length("header.left") - frame.length("bow.first");
        assert!((frame.length("loop.sill_to_bow") - closed).abs() < 1e-9);
    }
}
