//! The kinds of files that a person picks and saves.

/// The kind of a file: decides which files a picker shows and the extension of a saved file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FileKind {
    /// A class pack.
    ClassPack,
    /// A hand-in.
    HandIn,
    /// A carry file.
    CarryFile,
    /// A backup.
    Backup,
    /// A class key.
    ClassKey,
    /// A transfer.
    Transfer,
    /// A print.
    Pdf,
    /// A table as comma-separated text.
    Csv,
    /// A roster.
    Roster,
    /// A workbook (Office Open XML).
    Xlsx,
    /// A question bank.
    Bank,
    /// A file of own concepts.
    Catalogue,
}

impl FileKind {
    /// All kinds.
    pub const ALL: [Self; 12] = [
        Self::ClassPack,
        Self::HandIn,
        Self::CarryFile,
        Self::Backup,
        Self::ClassKey,
        Self::Transfer,
        Self::Pdf,
        Self::Csv,
        Self::Roster,
        Self::Xlsx,
        Self::Bank,
        Self::Catalogue,
    ];

    /// The file name's extension, without the dot.
    #[must_use]
    pub fn extension(self) -> &'static str {
        match self {
            Self::ClassPack => "sfclass",
            Self::HandIn => "sfhandin",
            Self::CarryFile => "sfcarry",
            Self::Backup => "sfbackup",
            Self::ClassKey => "sfkey",
            Self::Transfer => "sftransfer",
            Self::Pdf => "pdf",
            Self::Xlsx => "xlsx",
            Self::Csv | Self::Roster | Self::Bank | Self::Catalogue => "csv",
        }
    }

    /// The extensions of files that a person may pick for this kind. Hand-ins, for example, also
    /// come in a zip.
    #[must_use]
    pub fn picked_extensions(self) -> &'static [&'static str] {
        match self {
            Self::ClassPack => &["sfclass"],
            Self::HandIn => &["sfhandin", "zip"],
            Self::CarryFile => &["sfcarry"],
            Self::Backup => &["sfbackup"],
            Self::ClassKey => &["sfkey"],
            Self::Transfer => &["sftransfer"],
            Self::Pdf => &["pdf"],
            Self::Csv => &["csv"],
            Self::Roster => &["csv", "txt", "tsv", "zip"],
            Self::Xlsx => &["xlsx"],
            Self::Bank => &["csv", "xml", "zip"],
            Self::Catalogue => &["csv", "json"],
        }
    }

    /// The media type. Our own types are in the unregistered tree.
    #[must_use]
    pub fn media_type(self) -> &'static str {
        match self {
            Self::ClassPack => "application/x-surefoot-class",
            Self::HandIn => "application/x-surefoot-handin",
            Self::CarryFile => "application/x-surefoot-carry",
            Self::Backup => "application/x-surefoot-backup",
            Self::ClassKey => "application/x-surefoot-key",
            Self::Transfer => "application/x-surefoot-transfer",
            Self::Pdf => "application/pdf",
            Self::Xlsx => "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            Self::Csv | Self::Roster | Self::Bank | Self::Catalogue => "text/csv",
        }
    }
}
