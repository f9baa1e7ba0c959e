-maker = söm
plain = södra
