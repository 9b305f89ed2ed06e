//! Printable sheets and pages, CSV and XLSX.
