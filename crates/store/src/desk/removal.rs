//! What is left to do after something was removed or brought back.

use super::super::StoreError;
use super::DeskStore;

impl DeskStore {
    /// Removes the imports of which neither a line nor a hand-in is left.
    ///
    /// # Errors
    /// SQLite's.
    pub fn remove_empty_imports(&self) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM import WHERE NOT EXISTS (SELECT 1 FROM import_file f WHERE f.import = import.id)
               AND NOT EXISTS (SELECT 1 FROM hand_in h WHERE h.import = import.id)",
            [],
        )?;
        Ok(())
    }

    /// Raises the version of every class's last pack.
    ///
    /// # Errors
    /// SQLite's.
    pub fn skip_pack_versions(&self, versions: u32) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET pack_version = pack_version + ?1, pack_stamp = '' WHERE pack_version > 0",
            [versions],
        )?;
        Ok(())
    }
}
