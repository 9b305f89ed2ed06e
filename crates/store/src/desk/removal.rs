//! What is done after a removal or a restore.

use super::super::StoreError;
use super::DeskStore;

impl DeskStore {
    /// Removes the imports that have neither a line nor a hand-in left.
    pub fn remove_empty_imports(&self) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM import WHERE NOT EXISTS (SELECT 1 FROM import_file f WHERE f.import = import.id)
               AND NOT EXISTS (SELECT 1 FROM hand_in h WHERE h.import = import.id)",
            [],
        )?;
        Ok(())
    }

    /// Raises the version of every class's last class pack.
    pub fn skip_pack_versions(&self, versions: u32) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET pack_version = pack_version + ?1, pack_stamp = '' WHERE pack_version > 0",
            [versions],
        )?;
        Ok(())
    }
}
