-- The macro filled: "x" where a text has a character beyond U+0000 to U+0020, else nothing.
CREATE OR REPLACE MACRO filled(stated) AS CASE
  WHEN stated = '' THEN ''
  WHEN unicode(stated) > 32 OR regexp_matches(stated, '[^\x00-\x20]') THEN 'x'
  ELSE ''
END;
