//! Which function reaches which function and which piece of data, by the linker's relocations.

use core::ops::Range;
use std::collections::{BTreeMap, BTreeSet};

use anyhow::{Context as _, Result, ensure};
use wasmparser::{
    DataKind, ElementItems, ElementKind, ExternalKind, KnownCustom, Linking, Name, Operator,
    Parser, Payload, RelocationEntry, RelocationType, SymbolInfo, TypeRef,
};

/// A function by its index, or a piece of data by its symbol.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Node {
    Function(u32),
    Data(usize),
}

/// The whole module as nodes and what each needs.
#[derive(Default)]
pub(super) struct Graph {
    names: BTreeMap<u32, String>,
    exports: Vec<u32>,
    imported: u32,
    table: BTreeMap<u32, u32>,
    /// The addresses of each piece of data.
    data: BTreeMap<usize, Range<u32>>,
    /// Those that name a place in a source file.
    places: BTreeSet<usize>,
    needs: BTreeMap<Node, BTreeSet<Node>>,
}

/// Where the parts of a module lie, while it is read.
#[derive(Default)]
struct Parts {
    symbols: Vec<Option<Node>>,
    code_start: usize,
    data_start: usize,
    bodies: Vec<Range<usize>>,
    /// Each segment: its address, its bytes in the file.
    segments: Vec<(u32, Range<usize>)>,
    /// Each defined piece of data: its symbol, segment, offset, size.
    pieces: Vec<(usize, u32, u32, u32)>,
    in_code: Vec<RelocationEntry>,
    in_data: Vec<RelocationEntry>,
}

impl Graph {
    pub(super) fn read(wasm: &[u8]) -> Result<Self> {
        let (mut graph, mut parts) = (Self::default(), Parts::default());
        for payload in Parser::new(0).parse_all(wasm) {
            graph.take(payload.context("the module cannot be read")?, wasm, &mut parts)?;
        }
        ensure!(!parts.in_code.is_empty(), "the module was linked without --emit-relocs");
        for (symbol, segment, offset, size) in &parts.pieces {
            let (address, _) = parts.segment(*segment)?;
            let from = address + offset;
            graph.data.insert(*symbol, from..from + size);
        }
        graph.connect(&parts)?;
        graph.find_places(wasm, &parts)?;
        Ok(graph)
    }

    fn take(&mut self, payload: Payload<'_>, wasm: &[u8], parts: &mut Parts) -> Result<()> {
        match payload {
            Payload::ImportSection(section) => {
                for import in section.into_imports() {
                    self.imported += u32::from(matches!(import?.ty, TypeRef::Func(_)));
                }
            }
            Payload::ExportSection(section) => {
                for export in section {
                    let export = export?;
                    if export.kind == ExternalKind::Func {
                        self.exports.push(export.index);
                    }
                }
            }
            Payload::ElementSection(section) => {
                for element in section {
                    let element = element?;
                    let ElementKind::Active { offset_expr, .. } = &element.kind else { continue };
                    let from = constant(offset_expr)?;
                    let ElementItems::Functions(functions) = element.items else { continue };
                    for (place, function) in (from..).zip(functions) {
                        self.table.insert(place, function?);
                    }
                }
            }
            Payload::CodeSectionStart { range, .. } => parts.code_start = range.start,
            Payload::CodeSectionEntry(body) => parts.bodies.push(body.range()),
            Payload::DataSection(section) => {
                parts.data_start = section.range().start;
                for data in section {
                    let data = data?;
                    let DataKind::Active { offset_expr, .. } = &data.kind else { continue };
                    let at = data.data.as_ptr() as usize - wasm.as_ptr() as usize;
                    let bytes = at..at + data.data.len();
                    parts.segments.push((constant(offset_expr)?, bytes));
                }
            }
            Payload::CustomSection(section) => match section.as_known() {
                KnownCustom::Name(section) => {
                    for subsection in section {
                        let Name::Function(map) = subsection? else { continue };
                        for naming in map {
                            let naming = naming?;
                            let name = format!("{:#}", rustc_demangle::demangle(naming.name));
                            self.names.insert(naming.index, name);
                        }
                    }
                }
                KnownCustom::Linking(section) => {
                    for subsection in section.subsections() {
                        let Linking::SymbolTable(symbols) = subsection? else { continue };
                        for symbol in symbols {
                            let symbol = parts.symbol(&symbol?);
                            parts.symbols.push(symbol);
                        }
                    }
                }
                KnownCustom::Reloc(entries) => {
                    let list = match section.name() {
                        "reloc.CODE" => &mut parts.in_code,
                        "reloc.DATA" => &mut parts.in_data,
                        _ => return Ok(()),
                    };
                    for entry in entries.entries() {
                        list.push(entry?);
                    }
                }
                _ => {}
            },
            _ => {}
        }
        Ok(())
    }

    fn connect(&mut self, parts: &Parts) -> Result<()> {
        for entry in &parts.in_code {
            let Some(target) = parts.target(entry)? else { continue };
            let offset = parts.code_start + entry.offset as usize;
            let body = parts.bodies.partition_point(|body| body.start <= offset);
            let index = body.checked_sub(1).context("a relocation before all code")?;
            let function = self.imported + u32::try_from(index)?;
            self.needs.entry(Node::Function(function)).or_default().insert(target);
        }
        for entry in &parts.in_data {
            let Some(target) = parts.target(entry)? else { continue };
            let address = parts.address(parts.data_start + entry.offset as usize)?;
            let within = self.data.iter().filter(|(_, range)| range.contains(&address));
            let within: Vec<usize> = within.map(|(symbol, _)| *symbol).collect();
            ensure!(!within.is_empty(), "nothing is known to lie at {address:#x}");
            for symbol in within {
                self.needs.entry(Node::Data(symbol)).or_default().insert(target);
            }
        }
        Ok(())
    }

    /// Finds the names of source files, and what points at nothing but one of them: its lines.
    fn find_places(&mut self, wasm: &[u8], parts: &Parts) -> Result<()> {
        for (symbol, segment, offset, size) in &parts.pieces {
            let (_, bytes) = parts.segment(*segment)?;
            let from = bytes.start + *offset as usize;
            let text = wasm.get(from..from + *size as usize).unwrap_or_default();
            let text = text.strip_suffix(b"\0").unwrap_or(text);
            if text.ends_with(b".rs") {
                self.places.insert(*symbol);
            }
        }
        let names: BTreeSet<Node> = self.places.iter().copied().map(Node::Data).collect();
        let points = |symbol: &usize| {
            let needs = self.needs.get(&Node::Data(*symbol));
            needs.is_some_and(|needs| needs.is_subset(&names))
        };
        let lines: Vec<usize> = self.data.keys().copied().filter(points).collect();
        self.places.extend(lines);
        Ok(())
    }

    /// The data that say where in a source file something is: nothing but a panic reads them.
    pub(super) fn places(&self) -> impl Iterator<Item = Node> {
        self.places.iter().copied().map(Node::Data)
    }

    pub(super) fn name(&self, function: u32) -> &str {
        self.names.get(&function).map_or("", String::as_str)
    }

    pub(super) fn exported(&self) -> impl Iterator<Item = u32> {
        self.exports.iter().copied()
    }

    pub(super) const fn is_imported(&self, function: u32) -> bool {
        function < self.imported
    }

    /// What stands in the function table, by place.
    pub(super) const fn table(&self) -> &BTreeMap<u32, u32> {
        &self.table
    }

    /// What `node` needs itself.
    pub(super) fn from(&self, node: Node) -> impl Iterator<Item = &Node> {
        self.needs.get(&node).into_iter().flatten()
    }

    /// All that the functions `from` reach; through a function only where `enter` says so.
    pub(super) fn reach(
        &self,
        from: impl Iterator<Item = u32>,
        mut enter: impl FnMut(u32) -> bool,
    ) -> BTreeSet<Node> {
        let mut reached = BTreeSet::new();
        let mut stack: Vec<Node> = from.map(Node::Function).collect();
        while let Some(node) = stack.pop() {
            if reached.insert(node) {
                let entered = |node: &Node| match node {
                    Node::Function(function) => enter(*function),
                    Node::Data(_) => true,
                };
                stack.extend(self.from(node).copied().filter(entered));
            }
        }
        reached
    }

    /// The addresses of data that are among `here` and not among `there`, as ranges in order.
    /// Two symbols may share their bytes.
    pub(super) fn only_in(&self, here: &BTreeSet<Node>, there: &BTreeSet<Node>) -> Vec<Range<u32>> {
        let of = |nodes: &BTreeSet<Node>| {
            let ranges =
                self.data.iter().filter(|(symbol, _)| nodes.contains(&Node::Data(**symbol)));
            ranges.flat_map(|(_, range)| range.clone()).collect::<BTreeSet<u32>>()
        };
        let kept = of(there);
        let mut ranges: Vec<Range<u32>> = Vec::new();
        for address in of(here).difference(&kept) {
            match ranges.last_mut() {
                Some(range) if range.end == *address => range.end += 1,
                _ => ranges.push(*address..address + 1),
            }
        }
        ranges
    }
}

impl Parts {
    fn symbol(&mut self, symbol: &SymbolInfo<'_>) -> Option<Node> {
        match symbol {
            SymbolInfo::Func { index, .. } => Some(Node::Function(*index)),
            SymbolInfo::Data { symbol: Some(at), .. } => {
                let symbol = self.symbols.len();
                self.pieces.push((symbol, at.index, at.offset, at.size));
                Some(Node::Data(symbol))
            }
            _ => None,
        }
    }

    /// What a relocation puts in; none where it is no function and no data.
    fn target(&self, entry: &RelocationEntry) -> Result<Option<Node>> {
        use RelocationType as Type;
        match entry.ty {
            Type::TypeIndexLeb
            | Type::GlobalIndexLeb
            | Type::GlobalIndexI32
            | Type::TableNumberLeb
            | Type::EventIndexLeb => Ok(None),
            Type::FunctionIndexLeb
            | Type::FunctionIndexI32
            | Type::TableIndexSleb
            | Type::TableIndexI32
            | Type::MemoryAddrLeb
            | Type::MemoryAddrSleb
            | Type::MemoryAddrI32 => {
                let symbol = self.symbols.get(entry.index as usize);
                symbol.copied().with_context(|| format!("no symbol {}", entry.index))
            }
            other => anyhow::bail!("a relocation of type {other:?}, which is not expected here"),
        }
    }

    fn segment(&self, index: u32) -> Result<&(u32, Range<usize>)> {
        self.segments.get(index as usize).with_context(|| format!("no data segment {index}"))
    }

    /// The address at which a byte of the file is loaded.
    fn address(&self, offset: usize) -> Result<u32> {
        let segment = self.segments.iter().find(|(_, bytes)| bytes.contains(&offset));
        let (address, bytes) = segment.context("a relocation outside all data")?;
        Ok(address + u32::try_from(offset - bytes.start)?)
    }
}

fn constant(expression: &wasmparser::ConstExpr<'_>) -> Result<u32> {
    match expression.get_operators_reader().read()? {
        Operator::I32Const { value } => Ok(value.cast_unsigned()),
        other => anyhow::bail!("an offset that is no constant: {other:?}"),
    }
}
