//! French: what is kept on the device.

use crate::draft::Unopened;
use crate::event::Trouble;
use crate::text::Kept;
use hangtrue_core::short::digits;

pub(in crate::text) const KEPT: Kept = Kept {
    newer: "Une version plus récente de cette page est prête. Ce que vous avez écrit reste.",
    take_over: "Utiliser la version plus récente",
    trouble,
    noted: "Compris",
    take_theirs: "L’afficher comme elle est là-bas",
    list: |count| match count {
        0 | 1 => [&digits(count as u64), " prise de mesures sur cet appareil"].concat(),
        count => [&digits(count as u64), " prises de mesures sur cet appareil"].concat(),
    },
    heading: "Prises de mesures sur cet appareil",
    lede: "Un navigateur peut effacer ce qu’il garde. Le lien de la commande est la trace qui \
           dure\u{a0}: envoyez-le, ne serait-ce qu’à vous-même.",
    none: "Il n’y en a aucune.",
    nameless: "Aucun camion nommé",
    numbers: ["Largeur", "Hauteur", "Linteau", "Arceau"],
    unopened: |why| match why {
        Unopened::Newer => {
            "Une version plus récente de cette page l’a écrite. Rechargez la page pour l’ouvrir."
        }
        Unopened::Damaged => "Elle est abîmée et ne peut pas être ouverte.",
    },
    open: "Ouvrir",
    delete: "Effacer",
    indeed: "Effacer cette prise de mesures de l’appareil? Elle ne pourra pas être récupérée.",
    delete_indeed: "L’effacer",
    spare: "La garder",
    another: "Mesurer une autre ouverture",
};

fn trouble(trouble: Trouble) -> &'static str {
    match trouble {
        Trouble::Full => {
            "Cet appareil n’a plus de place pour garder la prise de mesures. Continuez, et envoyez \
             le lien de la commande avant de quitter cette page; ou effacez celles qui sont \
             terminées."
        }
        Trouble::Blocked => {
            "Ce navigateur ne laisse pas la page garder la prise de mesures. Continuez, et envoyez \
             le lien de la commande avant de quitter cette page."
        }
        Trouble::Emptied => {
            "Le navigateur avait effacé ce qu’il gardait de cette prise de mesures. Elle est gardée \
             de nouveau; le lien de la commande est la trace qui dure."
        }
        Trouble::Newer => {
            "La prise de mesures sur cet appareil a été écrite par une version plus récente de cette \
             page et reste telle quelle. Rechargez la page pour l’ouvrir; ce que vous écrivez \
             maintenant en est une autre."
        }
        Trouble::Changed => "Cette prise de mesures a été changée dans un autre onglet.",
        Trouble::Split => {
            "Cette prise de mesures a aussi été changée dans un autre onglet. Les deux sont \
             gardées\u{a0}: celle que vous voyez ici est maintenant à part."
        }
        Trouble::Gone => {
            "Cette prise de mesures a été effacée dans un autre onglet. Si vous continuez à écrire, \
             elle est gardée de nouveau."
        }
    }
}
