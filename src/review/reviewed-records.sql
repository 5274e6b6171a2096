-- Records with the status they have after checks and rulings.
-- In: interpreted_records, final_statuses. Out: the view records.
CREATE OR REPLACE VIEW records AS
SELECT r.* REPLACE (coalesce(f.status, r.status) AS status, coalesce(f.reason, r.reason) AS reason)
FROM interpreted_records AS r
LEFT JOIN final_statuses AS f USING (record_no);
