//! The words around a dealer's own rules, in Spanish.

use crate::text::Dealer;

pub(super) const DEALER: Dealer = Dealer {
    unread: "No se pudieron leer las reglas del distribuidor, así que se usan las que trae la \
             página.",
    rules: |name, revision| ["Reglas de ", name, ", revisión ", &revision.to_string()].concat(),
    other_rules: |made_under, checked_by| {
        ["Hecho con: ", made_under, ". Revisado aquí con: ", checked_by, "."].concat()
    },
    built_in: "las reglas que trae la página",
    door: "¿Qué puerta?",
    no_door: "Aún sin decidir",
    needs: |header, post| match (header, post) {
        (Some(header), Some(post)) => {
            ["necesita un dintel de ", header, " y postes de ", post].concat()
        }
        (Some(header), None) => ["necesita un dintel de ", header].concat(),
        (None, Some(post)) => ["necesita postes de ", post].concat(),
        (None, None) => String::new(),
    },
    questions: |name| [name, " pregunta además"].concat(),
    optional: "si lo sabe",
    answers: "Sus respuestas",
    mean: |count, mean, place, tightest| {
        let count = count.to_string();
        ["el promedio de ", &count, " medidas, ", mean, "; la más justa, ", place, ": ", tightest]
            .concat()
    },
    number: |number| ["Pedido número ", number].concat(),
    page: |name| ["Entregarlo ahora a ", name].concat(),
    call: |number| ["Llamar al ", number].concat(),
    send_to: |name| ["Mándelo a ", name].concat(),
};
